import type { Collar, PlantCollar } from '../part'
import { evidenceFor, FROM_MEMORY, printedIn } from './evidence'

/** Foam rings from EVA tile: outer and inner saw, thickness in millimetres. */
const RINGS: readonly (readonly [outer: string, inner: string, thicknessMm: number])[] = [
  ['2-1/2', '2', 10],
  ['3', '2', 10],
  ['3-1/4', '2', 10],
  ['3-1/2', '2', 12],
  ['4', '3', 12],
  ['4-1/2', '3', 12]
]

export const COLLARS: readonly Collar[] = RINGS.map(([outer, inner, thicknessMm]) => ({
  id: `collar-${plain(outer)}-${plain(inner)}`,
  name: `Foam collar, ${outer} in saw outside, ${inner} in saw inside`,
  outerSawId: `saw-in-${plain(outer)}`,
  innerSawId: `saw-in-${plain(inner)}`,
  thicknessMm,
  foam: true,
  squeezeShare: 0.15,
  material: 'eva-foam',
  evidence: evidenceFor(['squeezeShare'], {
    thicknessMm: printedIn('eva-tile', '3/8 to 3/4 in thick')
  })
}))

/** Soft discs that hold the stem: bought ones, and ones cut from foam sheet with one saw. */
export const PLANT_COLLARS: readonly PlantCollar[] = [
  { id: 'plant-collar-2in', name: 'Plant collar for 2 in cups', outsideMm: 47, thicknessMm: 18, sawId: null },
  { id: 'plant-collar-3in', name: 'Plant collar for 3 in cups', outsideMm: 75, thicknessMm: 20, sawId: null },
  {
    id: 'plant-collar-cut-2',
    name: 'Plant collar cut with a 2 in saw',
    outsideMm: 46.99,
    thicknessMm: 10,
    sawId: 'saw-in-2'
  }
].map((collar) => ({ ...collar, evidence: { outsideMm: FROM_MEMORY, thicknessMm: FROM_MEMORY } }))

function plain(size: string): string {
  return size.replace('/', '-')
}
