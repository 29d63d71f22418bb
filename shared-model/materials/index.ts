export type { MaterialId } from './material-id'
export { MATERIAL_IDS } from './material-id'
