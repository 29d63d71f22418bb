import { type CropRow, printed, SMALL_GREENS_L, span } from './crop-row'

/** Herbs. */
export const HERBS: readonly CropRow[] = [
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
    (id): CropRow => ({
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
