import type { ReactNode } from 'react'
import { applyFix } from '../../shared-model/design'
import type { Severity, Where } from '../../shared-model/outcome'
import type { PlanFinding, PlanProblem } from '../../shared-model/plan'
import { source } from '../../shared-model/sources'
import { GRADE_NAMES } from '../../shared-model/words'
import { useOffered } from '../catalogue/use-offered'
import { Icon } from '../icons/Icon'
import { problemText, SEVERITY_NAMES, wordsOf } from '../plan/wording'
import { useActions, useApp } from '../store/use-app'
import { useGoTo } from './use-go-to'
import { usePlaceWords } from './use-place-words'

/** One finding: what it says, where it is, and the change that clears it. */
export function FindingLine({ finding }: { readonly finding: PlanFinding }) {
  const shows = useApp((state) => state.workshop.shows)
  const { saws, closures } = useOffered()
  const onHand = { saws, closures }
  const { editDesign } = useActions()
  const { fix, where, severity } = finding
  const from = finding.source === undefined || finding.source === 'user' ? undefined : source(finding.source)
  return (
    <Line
      severity={severity}
      where={where}
      more={
        fix === undefined ? null : (
          <button
            type="button"
            className="button"
            onClick={() => editDesign('clear a finding', (design) => applyFix(design, fix, onHand))}
          >
            Mend it
          </button>
        )
      }
    >
      {wordsOf(finding, shows)}
      {from === undefined ? null : (
        <span className="quiet small">
          {from.body === 'none' ? ' ' : ` ${from.body}, ${from.title} `}({GRADE_NAMES[from.grade]}).
        </span>
      )}
    </Line>
  )
}

/** Something that cannot be worked out: why, and where that is mended. */
export function ProblemLine({ problem }: { readonly problem: PlanProblem }) {
  const shows = useApp((state) => state.workshop.shows)
  return (
    <Line severity="stop" where={problem.where ?? {}}>
      {problemText(problem, shows)}
    </Line>
  )
}

interface LineProps {
  readonly severity: Severity
  readonly where: Where
  readonly children: ReactNode
  readonly more?: ReactNode
}

function Line({ severity, where, children, more }: LineProps) {
  const goTo = useGoTo()
  const place = usePlaceWords(where)
  const placed = where.field !== undefined || where.channelId !== undefined
  return (
    <li className="finding">
      <span className={`tag ${severity}`}>
        <Icon name={severity} />
        {SEVERITY_NAMES[severity]}
      </span>
      <span>
        {place === '' ? null : <strong>{place}: </strong>}
        {children}
      </span>
      <span className="button-row">
        {placed ? (
          <button type="button" className="button" onClick={() => goTo(where)}>
            Show
          </button>
        ) : null}
        {more}
      </span>
    </li>
  )
}
