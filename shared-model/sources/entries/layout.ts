import type { SourceEntry } from '../source-entry'

/** Sources of spacing along a channel, webs, fits on the sill, closures. */
export const layoutSources = {
  'gully-sites-by-pitch': {
    body: 'CRC Press',
    title: 'Hobby Hydroponics, gullies with sites at 8 in centres, 18 to a gully',
    year: 'n.d.',
    where: 'chapter 6',
    grade: 'published-in-part'
  },
  'reveal-least-reading': {
    body: 'joinery practice',
    title: 'A reveal is measured at several places and the least reading rules',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'web-least': {
    body: 'workshop practice',
    title: 'Least material between holes, beside them and at an end closure',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'sill-clearance': {
    body: 'workshop practice',
    title: 'Fit clearance of 3 mm kept at each end of a sill',
    year: 'n.d.',
    where: 'no source',
    grade: 'from-memory'
  },
  'canopy-overlap': {
    body: 'growing practice',
    title: 'Leaf against leaf over a tenth of two canopies is borne; more shades',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'closure-fit': {
    body: 'workshop practice',
    title: 'A closure holds on the size and material it is made for, by a joint that grips both',
    year: 'n.d.',
    where: 'no source; joint methods by solvent-cement-method',
    grade: 'common-practice'
  },
  'refill-and-level': {
    body: 'University of Florida IFAS',
    title: 'HS510, home hydroponics: leave a narrow unpainted strip as a level sight',
    year: 'n.d.',
    where: 'water culture; the refill opening is common practice',
    grade: 'published-in-part'
  }
} as const satisfies Record<string, SourceEntry>
