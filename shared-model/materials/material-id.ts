export const MATERIAL_IDS = [
  'pvc',
  'abs',
  'hdpe',
  'pp',
  'ps',
  'pet',
  'acrylic',
  'aluminium',
  'galvanised-steel',
  'zinc',
  'copper',
  'eva-foam',
  'pe-foam',
  'rubber',
  'unknown'
] as const
export type MaterialId = (typeof MATERIAL_IDS)[number]
