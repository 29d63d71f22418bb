import type { Crop } from './crop'
import { memory } from './crop-row'
import { GREENS } from './greens'
import { HERBS } from './herbs'

const FIELDS = [
  'pitchMm',
  'canopyMm',
  'plantHeightMm',
  'dailyUseMl',
  'ecMsPerCm',
  'ph',
  'grownMassG',
  'startLitres'
] as const

/** Crops to start from; what no source gives is graded from memory, and what is not known is null. */
export const CROPS: readonly Crop[] = [...HERBS, ...GREENS].map((row) => ({
  id: row.id,
  name: row.name,
  pitchMm: row.pitch,
  canopyMm: row.canopy,
  plantHeightMm: row.height,
  dailyUseMl: row.use,
  ecMsPerCm: row.ec,
  ph: row.ph,
  grownMassG: row.mass,
  startLitres: row.start,
  edible: true,
  conflicts: row.conflicts ?? [],
  evidence: { ...Object.fromEntries(FIELDS.map((field) => [field, memory])), ...row.evidence }
}))

/** The crop with this id; undefined when the catalogue has none. */
export const crop = (id: string): Crop | undefined => CROPS.find((each) => each.id === id)
