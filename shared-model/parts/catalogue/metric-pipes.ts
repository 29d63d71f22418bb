import type { Profile } from '../../profile'
import { FROM_MEMORY, printedIn } from './evidence'
import { pipe } from './inch-pipes'

/** EN 1401: catalogue masses show a mean wall some 8 to 12 % over the least wall; 10 % is taken. */
const EN1401_WALL_FACTOR = 1.1
const EN1401: readonly (readonly [outsideMm: number, leastWallMm: number])[] = [
  [110, 3.2],
  [125, 3.2],
  [125, 3.7],
  [160, 4],
  [160, 4.7]
]

/** EN 1329, series B: from memory, the standard's table could not be read. */
const EN1329: readonly (readonly [nominal: string, outsideMm: number, leastWallMm: number])[] = [
  ['32', 32, 3],
  ['40', 40, 3],
  ['50', 50, 3],
  ['75', 75, 3],
  ['82', 82.4, 3],
  ['90', 90, 3],
  ['110', 110, 3.2]
]

/** United Kingdom waste pipe: the nominal size is near the bore; the wall was not found. */
const UK_WASTE: readonly (readonly [nominal: string, joint: string, outsideMm: number, wallMm: number])[] = [
  ['32', 'push-fit', 34, 1.9],
  ['32', 'solvent-weld', 36, 1.9],
  ['40', 'push-fit', 41, 1.9],
  ['40', 'solvent-weld', 43, 1.9],
  ['50', 'push-fit', 54, 2],
  ['50', 'solvent-weld', 56, 2],
  ['110', 'soil', 110, 3.2]
]

export const METRIC_PIPES: readonly Profile[] = [
  ...EN1401.map(([outsideMm, leastWallMm]) =>
    pipe({
      id: `en1401-${outsideMm}x${leastWallMm}`,
      name: `PVC-U drain pipe, EN 1401, ${outsideMm} x ${leastWallMm} mm`,
      family: 'EN 1401 drain pipe',
      outsideMm,
      leastWallMm,
      averageWallMm: leastWallMm * EN1401_WALL_FACTOR,
      toleranceMm: 0.3,
      evidence: {
        widthMm: printedIn('en1401-pipe', `${outsideMm} mm`),
        heightMm: printedIn('en1401-pipe', `${outsideMm} mm`),
        leastWallMm: printedIn('en1401-pipe', `${leastWallMm} mm`),
        averageWallMm: printedIn('en1401-pipe', 'derived from the mass per metre: 8 to 12 % over the least wall')
      }
    })
  ),
  ...EN1329.map(([nominal, outsideMm, leastWallMm]) =>
    pipe({
      id: `en1329-${nominal}`,
      name: `PVC-U waste pipe, EN 1329, ${nominal} mm`,
      family: 'EN 1329 waste pipe',
      outsideMm,
      leastWallMm,
      averageWallMm: leastWallMm * 1.05,
      toleranceMm: 0.3,
      evidence: {}
    })
  ),
  ...UK_WASTE.map(([nominal, joint, outsideMm, wallMm]) =>
    pipe({
      id: `uk-waste-${nominal}-${joint}`,
      name: `Waste pipe, ${nominal} mm nominal, ${joint}`,
      family: 'United Kingdom waste pipe',
      outsideMm,
      leastWallMm: wallMm,
      averageWallMm: wallMm * 1.05,
      toleranceMm: 0.3,
      evidence: {
        widthMm: printedIn('uk-waste-pipe', `${outsideMm} mm`),
        heightMm: printedIn('uk-waste-pipe', `${outsideMm} mm`),
        leastWallMm: { ...FROM_MEMORY, printed: 'wall not found' }
      }
    })
  )
]
