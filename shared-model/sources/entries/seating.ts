import type { SourceEntry } from '../source-entry'

/** Sources of how parts sit in each other. */
export const seatingSources = {
  'seat-geometry': {
    body: 'geometry of rims, tapers and rings',
    title: 'Land, play, wedge depth and squeeze from diameters and heights',
    year: 'n.d.',
    where: 'no published value; checked by cases worked by hand',
    grade: 'common-practice'
  },
  'rim-land-least': {
    body: 'workshop practice',
    title: 'A rim keeps at least 1.5 mm of land all round',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'taper-press': {
    body: 'workshop practice',
    title: 'A flexible cup gives about 0.5 mm on its diameter when pressed home by hand',
    year: 'n.d.',
    where: 'no source',
    grade: 'from-memory'
  },
  'push-fit-limit': {
    body: 'workshop practice',
    title: 'A parallel wall goes in by hand up to 0.5 mm wider than its hole',
    year: 'n.d.',
    where: 'no source',
    grade: 'from-memory'
  },
  'friction-angle': {
    body: 'mechanics of friction',
    title: 'Plastic on plastic, dry: about 0.2, an angle of 11 degrees',
    year: 'n.d.',
    where: 'no source',
    grade: 'from-memory'
  },
  'foam-squeeze': {
    body: 'workshop practice',
    title: 'A ring of soft foam gives about 15 % of its outside',
    year: 'n.d.',
    where: 'no source',
    grade: 'from-memory'
  },
  'pipe-strip-least': {
    body: 'workshop practice',
    title: 'At least 6 mm of pipe beside a hole, seen from above',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'riser-cut-margin': {
    body: 'workshop practice',
    title: 'A riser is cut at least 3 mm further from its rim than where it wedges',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  }
} as const satisfies Record<string, SourceEntry>
