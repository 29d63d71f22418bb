export type { Catalogue, CatalogueKind } from './catalogue'
export { CATALOGUE, cataloguePart, unmeasuredFields } from './catalogue'
export { checkClosure, checkCollar, checkCup, checkPlantCollar, checkRiser, checkSaw } from './check-part'
export type { PartsProblem, PartsProblemCodes } from './codes'
export type { CollarRing } from './collar-ring'
export { collarRing } from './collar-ring'
export {
  bodyDiameter,
  checkFrustum,
  cupSolidVolume,
  cupVolume,
  frustumVolume,
  halfAngleDeg,
  halfAngleTangent
} from './cup-geometry'
export type { ClosureKind, Collar, Cup, EndClosure, HoleSaw, JointMethod, PlantCollar, Riser } from './part'
