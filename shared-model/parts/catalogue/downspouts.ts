import type { MaterialId } from '../../materials'
import type { Profile } from '../../profile'
import { MM_PER_INCH } from '../../units'
import { evidenceFor, PROFILE_FIELDS, printedIn } from './evidence'

/** Sheet of the usual downspouts: one printed thickness for each kind. */
const PLAIN_SHEET_IN = 0.024
const CORRUGATED_SHEET_IN = 0.019
const GALVANISED_26_IN = 0.0217

/** Rectangular downspouts by their printed outside sizes; the long side lies flat. Corner radii are from memory. */
export const DOWNSPOUTS: readonly Profile[] = [
  ...(
    [
      ['2', 1.75, 2.25],
      ['3', 2, 3],
      ['4', 3, 4],
      ['5', 3.75, 4.75],
      ['6', 4, 6]
    ] as const
  ).map(([nominal, short, long]) => downspout('plain', nominal, short, long, PLAIN_SHEET_IN, 'aluminium')),
  ...(
    [
      ['2', 1.75, 2.25],
      ['3', 2.375, 3.25],
      ['4', 2.75, 4.25],
      ['5', 3.75, 5]
    ] as const
  ).map(([nominal, short, long]) => downspout('corrugated', nominal, short, long, CORRUGATED_SHEET_IN, 'aluminium')),
  downspout('plain', '3', 2, 3, GALVANISED_26_IN, 'galvanised-steel'),
  downspout('plain', '4', 3, 4, GALVANISED_26_IN, 'galvanised-steel'),
  older(),
  vinyl()
]

function downspout(
  kind: 'plain' | 'corrugated',
  nominal: string,
  shortIn: number,
  longIn: number,
  sheetIn: number,
  material: MaterialId
): Profile {
  const steel = material === 'galvanised-steel'
  const sheet = steel
    ? printedIn('sheet-gauge', '26 gauge galvanised: 0.0217 in')
    : kind === 'plain'
      ? printedIn('downspout-clauses', '0.024 +/- 0.002 in')
      : printedIn(
          'downspout-sheet',
          '0.016 / 0.019 / 0.024 in; depth of the folds not given, the clear bore is smaller'
        )
  return {
    ...sheetProfile(shortIn, longIn, sheetIn),
    id: `downspout-${kind}-${nominal}in${steel ? '-galvanised' : ''}`,
    name: `Downspout, ${kind}, ${nominal} in nominal, ${steel ? 'galvanised steel' : 'aluminium'}`,
    family: `${kind} rectangular downspout`,
    material,
    evidence: evidenceFor(PROFILE_FIELDS, {
      widthMm: printedIn('copper-downspout-sizes', `${longIn} in${disagrees(kind, nominal)}`, 'published'),
      heightMm: printedIn('copper-downspout-sizes', `${shortIn} in`, 'published'),
      averageWallMm: sheet,
      leastWallMm: sheet
    })
  }
}

/** The table's own area of this row does not agree with its sides. */
function disagrees(kind: string, nominal: string): string {
  return kind === 'plain' && nominal === '5' ? '; the area printed beside it, 20.00 in2, is not 3.75 x 4.75 in' : ''
}

function older(): Profile {
  return {
    ...sheetProfile(1.75, 2.75, CORRUGATED_SHEET_IN),
    id: 'downspout-older-2x3',
    name: 'Downspout, plain, older 2 x 3 in, aluminium',
    family: 'plain rectangular downspout',
    material: 'aluminium',
    evidence: evidenceFor(PROFILE_FIELDS, {
      widthMm: printedIn('downspout-older', '2-3/4 in'),
      heightMm: printedIn('downspout-older', '1-3/4 in'),
      averageWallMm: printedIn('downspout-sheet', '0.016 / 0.019 / 0.024 in'),
      leastWallMm: printedIn('downspout-sheet', '0.016 / 0.019 / 0.024 in')
    })
  }
}

/** No published size was found: everything about it asks to be measured. */
function vinyl(): Profile {
  return {
    ...sheetProfile(2, 3, 0.07),
    id: 'downspout-vinyl-2x3',
    name: 'Downspout, vinyl, 2 x 3 in nominal',
    family: 'vinyl rectangular downspout',
    material: 'pvc',
    evidence: evidenceFor(PROFILE_FIELDS, {})
  }
}

function sheetProfile(shortIn: number, longIn: number, sheetIn: number) {
  return {
    shape: 'rectangle',
    widthMm: longIn * MM_PER_INCH,
    heightMm: shortIn * MM_PER_INCH,
    outsideToleranceMm: 1,
    averageWallMm: sheetIn * MM_PER_INCH,
    leastWallMm: sheetIn * MM_PER_INCH,
    cornerRadiusMm: 3,
    opaque: true,
    foodContactMark: null
  } as const
}
