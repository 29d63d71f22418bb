import type { SourceEntry } from '../source-entry'

/** Sources of levels, gaps, volumes and feeds. */
export const reservoirSources = {
  'medium-wet': {
    body: 'growing practice',
    title: 'A cup of wet growing medium weighs up to what its volume of water does',
    year: 'n.d.',
    where: 'no source read; weigh your own',
    grade: 'from-memory'
  },
  'immersion-at-planting': {
    body: 'University of Hawaii CTAHR; Acta Horticulturae',
    title: 'Immersion of the pot at planting: 0.5 in, 2 cm or more, 3 cm',
    year: '2010; 2004; 2009',
    where: 'VC-1 p. 1; 648:83-89 and 843:65-72, abstracts',
    grade: 'published-in-part'
  },
  'air-gap-water-culture': {
    body: 'University of Florida IFAS',
    title: 'HS510, water culture: 1 in of air for young plants, 2 to 3 in for larger ones',
    year: 'n.d.',
    where: 'water culture',
    grade: 'published-in-part'
  },
  'rise-over-air-roots': {
    body: 'Acta Horticulturae',
    title: 'Non-circulating hydroponics: a rise of more than 2 cm over roots in air may injure the plant',
    year: '2004',
    where: '648:83-89, abstract',
    grade: 'published-in-part'
  },
  'end-of-crop': {
    body: 'Acta Horticulturae; Journal of Vegetable Science',
    title: 'Solution left at the end of a crop: under 10 %; 1.3 of 7.6 cm (17 %)',
    year: '2004; 2005',
    where: '648:83-89 and 11(2), abstracts',
    grade: 'published-in-part'
  },
  'float-bed-volumes': {
    body: 'Florida State Horticultural Society',
    title: 'Float beds of 80 and 125 gal for 72 plants, 5 and 8 in tall',
    year: 'n.d.',
    where: 'Proceedings, abstract',
    grade: 'published'
  },
  'bore-volume': {
    body: 'geometry of the bore',
    title: 'Wet area times length less displacement; a fall integrated along the channel',
    year: 'n.d.',
    where: 'wet areas by circle-segment-table and circular-channel-geometry',
    grade: 'published-in-part'
  },
  'riser-ladder': {
    body: 'geometry of tapers',
    title: 'A riser lifts by the distance from its rim to where its body measures the opening',
    year: 'n.d.',
    where: 'no published value; checked by cases worked by hand',
    grade: 'common-practice'
  },
  'head-under-face': {
    body: 'growing practice',
    title: 'Small channels filled 50 to 75 % with the cup in the solution do well, 95 % without risers does not',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'ciaaw-2021': {
    body: 'IUPAC CIAAW',
    title: 'Abridged standard atomic weights',
    year: '2021',
    where: 'abridged table',
    grade: 'published'
  },
  'salt-arithmetic': {
    body: 'Cornell University',
    title: 'e-GRO Edible Alert 3(5), fertilizer calculation basics',
    year: '2018',
    where: 'worked example of magnesium; P2O5 and K2O',
    grade: 'published'
  },
  'hoagland-solution': {
    body: 'California Agricultural Experiment Station',
    title: 'The water-culture method for growing plants without soil, solution 1',
    year: '1938, revised 1950',
    where: 'Circular 347, as tabulated',
    grade: 'published-in-part'
  },
  'conductivity-scales': {
    body: 'University of Tennessee; meter practice',
    title: 'Scales of 500, 640 and 700 ppm to the mS/cm',
    year: 'n.d.',
    where: 'glossary',
    grade: 'published-in-part'
  },
  'concentrate-dilution': {
    body: 'growing practice',
    title: 'Conductivity adds on the source water and goes straight between half and double the dose',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  }
} as const satisfies Record<string, SourceEntry>
