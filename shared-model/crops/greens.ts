import { type CropRow, HEAD_L, printed, SMALL_GREENS_L, span } from './crop-row'

/** Leafy greens and strawberry. */
export const GREENS: readonly CropRow[] = [
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
  }
]
