import type { Cup, Riser } from '../part'
import { evidenceFor } from './evidence'

const CUP_FIELDS = [
  'rimOutsideMm',
  'rimThicknessMm',
  'bodyUnderRimMm',
  'bottomMm',
  'heightMm',
  'wallMm',
  'floodedShare',
  'massG'
] as const

/** No published sizes exist for slotted cups and drinking cups: all from memory, in millimetres and grams. */
type Row = readonly [
  id: string,
  name: string,
  rim: number,
  rimBand: number,
  underRim: number,
  bottom: number,
  height: number,
  wall: number,
  mass: number
]

const SLOTTED: readonly Row[] = [
  ['cup-2in', 'Slotted cup, 2 in', 60, 2, 49, 35, 50, 1.2, 7],
  ['cup-3in', 'Slotted cup, 3 in', 91, 2.5, 77, 52, 75, 1.4, 17]
]

const DRINKING: readonly Row[] = [
  ['drinking-cup-3oz', 'Drinking cup, 3 oz', 57, 2.5, 53, 41, 57, 0.35, 2],
  ['drinking-cup-5oz', 'Drinking cup, 5 oz', 66, 2.5, 62, 45, 72, 0.4, 3],
  ['drinking-cup-7oz', 'Drinking cup, 7 oz', 70, 2.5, 66, 46, 92, 0.4, 4],
  ['drinking-cup-9oz', 'Drinking cup, 9 oz', 78, 3, 74, 54, 92, 0.4, 5],
  ['drinking-cup-12oz', 'Drinking cup, 12 oz', 88, 3, 84, 57, 110, 0.45, 7],
  ['drinking-cup-16oz', 'Drinking cup, 16 oz', 96, 3.5, 91, 61, 120, 0.5, 9]
]

/** Share of a filled slotted cup's inside that solution enters, round a coarse medium. */
const SLOTTED_PORE_SHARE = 0.45

export const CUPS: readonly Cup[] = [
  ...SLOTTED.map((row) => cup(row, false, SLOTTED_PORE_SHARE)),
  ...DRINKING.map((row) => cup(row, true, 0))
]

function cup([id, name, rim, band, under, bottom, height, wall, mass]: Row, flexible: boolean, flooded: number): Cup {
  return {
    id,
    name,
    rimOutsideMm: rim,
    rimThicknessMm: band,
    bodyUnderRimMm: under,
    bottomMm: bottom,
    heightMm: height,
    wallMm: wall,
    flexible,
    floodedShare: flooded,
    material: 'pp',
    massG: mass,
    evidence: evidenceFor(CUP_FIELDS, {})
  }
}

/** Risers to start from: drinking cups cut off below the rim. The cut is the grower's to change. */
export const RISERS: readonly Riser[] = DRINKING.map((row) => {
  const whole = cup(row, true, 0)
  return {
    id: whole.id.replace('drinking-cup', 'riser'),
    name: `Riser from ${whole.name.toLowerCase()}`,
    cup: whole,
    opened: { by: 'cut', belowRimMm: Math.round(whole.heightMm * 0.6) }
  }
})
