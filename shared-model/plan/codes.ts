import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

/** Every finding code with its figures: the rooms' own interfaces put together. */
export type FindingCodes = {}

/** Every problem code with its figures. */
export interface ProblemCodes extends RangeProblemCodes {}

export type PlanFinding = FindingOf<FindingCodes>
export type PlanProblem = ProblemOf<ProblemCodes>
