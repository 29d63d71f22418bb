export type { BenchPlan, BenchStep, DrillRow, OperationKind } from './bench-plan'
export type { Drill, OwnedSaw, StepTimes } from './bench-setup'
