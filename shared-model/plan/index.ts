export type { FindingCodes, PlanFinding, PlanFindingCodes, PlanProblem, ProblemCodes } from './codes'
export type { EvaluateOptions } from './evaluate'
export { evaluate } from './evaluate'
export type { ChannelPlan, Plan } from './plan'
