import type { Evidence } from '../sources'
import type { Crop, Span } from './crop'

/** Lengths in mm, use in mL a day, conductivity in mS/cm at 25 C, mass in g, volume in L. */
interface Row {
  readonly id: string
  readonly name: string
  readonly pitch: Span | null
  readonly canopy: number
  readonly height: number
  readonly use: Span | null
  readonly ec: Span | null
  readonly ph: Span | null
  readonly mass: number
  readonly start: number | null
  readonly conflicts?: readonly string[]
  readonly evidence: Readonly<Record<string, Evidence>>
}

const span = (least: number, most: number = least): Span => ({ least, most })
const printed = (source: string, text: string, grade: Evidence['grade'] = 'published-in-part'): Evidence => ({
  grade,
  source,
  printed: text
})
const memory: Evidence = { grade: 'from-memory', source: 'memory' }

/** Small greens: the lower of the litres that a bucket of four plants leaves each. */
const SMALL_GREENS_L = 2.4
const HEAD_L = 4

const ROWS: readonly Row[] = [
  {
    id: 'basil',
    name: 'Basil',
    pitch: span(150, 250),
    canopy: 300,
    height: 500,
    use: span(40, 120),
    ec: span(1, 1.6),
    ph: span(5.5, 6),
    mass: 120,
    start: SMALL_GREENS_L,
    conflicts: ['Spacing 15-25 cm and 8-40 plants/m2 stand beside each other in one table and are not a square grid.'],
    evidence: {
      pitchMm: printed('spacing-fao', '15-25 cm'),
      canopyMm: printed('spacing-fao', '30 wide'),
      plantHeightMm: printed('spacing-fao', '30-70 tall'),
      ecMsPerCm: printed('ec-table', '1.0-1.6'),
      ph: printed('ec-table', '5.5-6.0')
    }
  },
  {
    id: 'parsley',
    name: 'Parsley',
    pitch: span(150, 300),
    canopy: 350,
    height: 450,
    use: span(40, 120),
    ec: span(1.8, 2.2),
    ph: span(6, 6.5),
    mass: 120,
    start: SMALL_GREENS_L,
    conflicts: ['EC 1.8-2.2 in one table; a trial found that growth did not depend on EC from 0.5 to 4.0.'],
    evidence: {
      pitchMm: printed('spacing-fao', '15-30 cm'),
      canopyMm: printed('spacing-fao', '30-40 wide'),
      plantHeightMm: printed('spacing-fao', '30-60 tall'),
      ecMsPerCm: printed('ec-table', '1.8-2.2'),
      ph: printed('ec-table', '6.0-6.5')
    }
  },
  {
    id: 'lettuce',
    name: 'Lettuce, full head',
    pitch: span(180, 300),
    canopy: 280,
    height: 250,
    use: span(67, 171),
    ec: span(1.2, 1.8),
    ph: span(6, 7),
    mass: 220,
    start: HEAD_L,
    conflicts: [
      'EC 1.2-1.8 in one table; best yield at 1.8 or more in a trial of 1.4-2.0.',
      'pH 6.0-7.0 in one table; at pH 7.0 shoots weighed 26 % less than at 5.8 in a trial.',
      'Spacing 18-30 cm here, 15-20 cm and 30 cm in other sources, 10 x 12 cm for most yield per area in a trial.'
    ],
    evidence: {
      pitchMm: printed('spacing-fao', '18-30 cm'),
      dailyUseMl: printed('lettuce-use', '67 to 171 mL a day as a mean, derived; the last weeks are far above it'),
      ecMsPerCm: printed('ec-table', '1.2-1.8'),
      ph: printed('ec-table', '6.0-7.0'),
      grownMassG: printed('still-trial', '220 g a head', 'published'),
      startLitres: printed('still-bottle', '4 L a plant')
    }
  },
  {
    id: 'leaf-lettuce',
    name: 'Lettuce, cut young',
    pitch: span(152, 203),
    canopy: 200,
    height: 200,
    use: span(30, 100),
    ec: span(1.2, 1.8),
    ph: span(6, 7),
    mass: 100,
    start: SMALL_GREENS_L,
    conflicts: ['pH 6.0-7.0 in one table; at pH 7.0 shoots weighed 26 % less than at 5.8 in a trial.'],
    evidence: {
      pitchMm: printed('spacing-hobby', '6 x 6 to 6 x 8 in'),
      ecMsPerCm: printed('ec-table', '1.2-1.8'),
      ph: printed('ec-table', '6.0-7.0'),
      startLitres: printed('bucket-volume', '0.63-0.83 gal a plant')
    }
  },
  {
    id: 'pak-choi',
    name: 'Pak choi',
    pitch: span(100, 120),
    canopy: 200,
    height: 250,
    use: span(40, 120),
    ec: span(1.5, 2),
    ph: span(7),
    mass: 150,
    start: SMALL_GREENS_L,
    conflicts: ['pH 7.0 in one table; 5.5-6.5 for most crops in a review.'],
    evidence: {
      pitchMm: printed('spacing-deep-flow', '10 x 12 cm', 'published'),
      ecMsPerCm: printed('ec-table', '1.5-2.0'),
      ph: printed('ec-table', '7.0')
    }
  },
  {
    id: 'chard',
    name: 'Swiss chard',
    pitch: span(158),
    canopy: 300,
    height: 400,
    use: span(60, 160),
    ec: span(1.5, 2.5),
    ph: span(5.5, 6.5),
    mass: 250,
    start: HEAD_L,
    evidence: {
      pitchMm: printed('spacing-chard', '40 plants/m2 best: 15.8 cm by square grid'),
      ecMsPerCm: printed('ec-most-crops', '1.5-2.5 for most crops'),
      ph: printed('ec-most-crops', '5.5-6.5 for most crops')
    }
  },
  {
    id: 'mint',
    name: 'Mint',
    pitch: span(100, 300),
    canopy: 300,
    height: 600,
    use: span(60, 160),
    ec: span(1.5, 2.5),
    ph: span(5.5, 6.5),
    mass: 150,
    start: SMALL_GREENS_L,
    conflicts: [
      'No hydroponic spacing was found: the span is of a field trial of peppermint, without steady yield difference.'
    ],
    evidence: {
      pitchMm: printed('spacing-mint', '10, 20 or 30 cm in the row, in the field'),
      plantHeightMm: printed('mint-roots', 'shoots 58-64 cm tall', 'published'),
      ecMsPerCm: printed('ec-most-crops', '1.5-2.5 for most crops'),
      ph: printed('ec-most-crops', '5.5-6.5 for most crops')
    }
  },
  {
    id: 'strawberry',
    name: 'Strawberry',
    pitch: null,
    canopy: 300,
    height: 250,
    use: span(50, 150),
    ec: span(1.8, 2.2),
    ph: span(6),
    mass: 250,
    start: HEAD_L,
    conflicts: [
      'EC 1.8-2.2 in one table; about 1.0 with pH 5.5-6.0 and a flush above 1.2 by another source; 1.3 then 2.0 in a trial.',
      'Spacing was published only per floor area of stacked systems: say your own pitch.'
    ],
    evidence: { ecMsPerCm: printed('ec-table', '1.8-2.2'), ph: printed('ec-table', '6.0') }
  },
  {
    id: 'spinach',
    name: 'Spinach',
    pitch: span(75, 150),
    canopy: 180,
    height: 200,
    use: span(30, 90),
    ec: span(1.8, 2.3),
    ph: span(6, 7),
    mass: 80,
    start: SMALL_GREENS_L,
    evidence: { ecMsPerCm: printed('ec-table', '1.8-2.3'), ph: printed('ec-table', '6.0-7.0') }
  },
  {
    id: 'sage',
    name: 'Sage',
    pitch: span(200, 300),
    canopy: 300,
    height: 450,
    use: span(30, 90),
    ec: span(1, 1.6),
    ph: span(5.5, 6.5),
    mass: 120,
    start: null,
    evidence: { ecMsPerCm: printed('ec-table', '1.0-1.6'), ph: printed('ec-table', '5.5-6.5') }
  },
  ...(['cilantro', 'dill'] as const).map(
    (id): Row => ({
      id,
      name: id === 'dill' ? 'Dill' : 'Cilantro',
      pitch: span(100, 200),
      canopy: 200,
      height: id === 'dill' ? 500 : 300,
      use: span(30, 90),
      ec: span(0.5, 4),
      ph: span(5.5, 6.5),
      mass: 60,
      start: SMALL_GREENS_L,
      conflicts: ['EC 0.5-4.0 is the range in which growth did not depend on it; 1.5-2.5 for most crops in a review.'],
      evidence: {
        ecMsPerCm: printed('ec-herbs-trial', '0.5-4.0 dS/m', 'published'),
        ph: printed('ec-most-crops', '5.5-6.5 for most crops')
      }
    })
  ),
  {
    id: 'chives',
    name: 'Chives',
    pitch: span(100, 150),
    canopy: 150,
    height: 300,
    use: span(20, 60),
    ec: span(1.5, 2.5),
    ph: span(5.5, 6.5),
    mass: 60,
    start: SMALL_GREENS_L,
    evidence: {
      ecMsPerCm: printed('ec-most-crops', '1.5-2.5 for most crops'),
      ph: printed('ec-most-crops', '5.5-6.5 for most crops')
    }
  }
]

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
export const CROPS: readonly Crop[] = ROWS.map((row) => ({
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
