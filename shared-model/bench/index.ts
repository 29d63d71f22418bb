export type { BenchChannel, BenchClosure, BenchCollar, BenchHole, BenchInput, BenchRiser } from './bench-input'
export type { BenchPlan, BenchStep, DrillRow, OperationKind } from './bench-plan'
export type { Drill, OwnedSaw, StepTimes } from './bench-setup'
export type { BenchFinding, BenchFindingCodes, BenchProblem, BenchProblemCodes } from './codes'
