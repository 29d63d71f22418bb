export type { FindingCodes, PlanFinding, PlanProblem, ProblemCodes } from './codes'
export type { ChannelPlan, Plan } from './plan'
export { PLAN_SCHEMA } from './plan'
