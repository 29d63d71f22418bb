export type { ClosureKind, Collar, Cup, EndClosure, HoleSaw, JointMethod, PlantCollar, Riser } from './part'
