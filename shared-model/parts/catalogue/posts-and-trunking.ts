import type { MaterialId } from '../../materials'
import type { Profile, ProfileShape } from '../../profile'
import type { EvidenceByField } from '../../sources'
import { MM_PER_INCH } from '../../units'
import { evidenceFor, FROM_MEMORY, PROFILE_FIELDS, printedIn } from './evidence'

interface Row {
  readonly id: string
  readonly name: string
  readonly family: string
  readonly shape: ProfileShape
  readonly widthMm: number
  readonly heightMm: number
  readonly wallMm: number
  readonly radiusMm: number
  readonly material: MaterialId
  readonly evidence: EvidenceByField
}

const POST = 'hollow PVC post'
const SQUARE_DOWNPIPE = 'square PVC-U downpipe'
const METAL_DOWNPIPE = 'EN 612 square metal downpipe'

const ROWS: readonly Row[] = [
  square('post-4in', 'PVC post sleeve, 4 x 4 in', POST, 4 * MM_PER_INCH, 0.125 * MM_PER_INCH, 'pvc', 4, {
    leastWallMm: printedIn('post-sleeve', 'about 1/8 in'),
    averageWallMm: printedIn('post-sleeve', 'about 1/8 in')
  }),
  square('post-5in', 'PVC fence post, 5 x 5 in', POST, 5 * MM_PER_INCH, 0.14 * MM_PER_INCH, 'pvc', 4, {
    leastWallMm: printedIn('fence-post-wall', '0.140 in'),
    averageWallMm: printedIn('fence-post-wall', '0.140 in')
  }),
  square('downpipe-65', 'PVC-U square downpipe, 65 x 65 mm', SQUARE_DOWNPIPE, 65, 1.8, 'pvc', 5, {
    widthMm: printedIn('uk-downpipe', '65 mm'),
    heightMm: printedIn('uk-downpipe', '65 mm')
  }),
  square('downpipe-80', 'PVC-U square downpipe, 80 x 80 mm', SQUARE_DOWNPIPE, 80, 2, 'pvc', 5, {
    widthMm: printedIn('uk-downpipe', '80 mm'),
    heightMm: printedIn('uk-downpipe', '80 mm')
  }),
  ...[80, 100].map((side) =>
    square(`en612-square-${side}`, `Zinc downpipe, ${side} x ${side} mm`, METAL_DOWNPIPE, side, 0.65, 'zinc', 3, {
      widthMm: printedIn('en612-downpipe', `${side} mm`),
      heightMm: printedIn('en612-downpipe', `${side} mm`),
      averageWallMm: printedIn('en612-downpipe', '0.65 mm'),
      leastWallMm: printedIn('en612-downpipe', '0.65 mm')
    })
  ),
  {
    id: 'trunking-100x50',
    name: 'PVC-U trunking with lid, 100 x 50 mm',
    family: 'PVC-U cable trunking',
    shape: 'trunking',
    widthMm: 100,
    heightMm: 50,
    wallMm: 2,
    radiusMm: 1,
    material: 'pvc',
    evidence: { widthMm: { ...FROM_MEMORY, printed: '100 x 50 mm' } }
  }
]

export const POSTS_AND_TRUNKING: readonly Profile[] = ROWS.map((row) => ({
  id: row.id,
  name: row.name,
  family: row.family,
  shape: row.shape,
  widthMm: row.widthMm,
  heightMm: row.heightMm,
  outsideToleranceMm: 0.8,
  averageWallMm: row.wallMm,
  leastWallMm: row.wallMm,
  cornerRadiusMm: row.radiusMm,
  material: row.material,
  opaque: true,
  foodContactMark: null,
  evidence: evidenceFor(PROFILE_FIELDS, row.evidence)
}))

function square(
  id: string,
  name: string,
  family: string,
  sideMm: number,
  wallMm: number,
  material: MaterialId,
  radiusMm: number,
  evidence: EvidenceByField
): Row {
  return {
    id,
    name,
    family,
    shape: 'rectangle',
    widthMm: sideMm,
    heightMm: sideMm,
    wallMm,
    radiusMm,
    material,
    evidence
  }
}
