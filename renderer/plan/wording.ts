import type { Shows } from '../../shared-model/design'
import type { PlanFinding, PlanProblem } from '../../shared-model/plan'
import { findingText, problemText as problemWords, SEVERITY_NAMES } from '../../shared-model/words'

/** What a finding says, in the shop's units. */
export const wordsOf = (finding: PlanFinding, shows: Shows): string => findingText(finding, shows)

/** What a problem says. */
export const problemText = (problem: PlanProblem, shows: Shows): string => problemWords(problem, shows)

export { SEVERITY_NAMES }
