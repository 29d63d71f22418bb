import type { SourceEntry } from '../source-entry'

/** Sources of bounds and layouts of circles on sheets, and of core reuse. */
export const ringsSources = {
  'oler-1961': {
    body: 'N. Oler, Acta Mathematica',
    title: 'An inequality in the geometry of numbers',
    year: '1961',
    where: 'volume 105, pages 19 to 48: points at least 1 apart in a convex region',
    grade: 'published'
  },
  'strip-zigzag': {
    body: 'derived',
    title: 'Most equal circles in a strip narrower than two rows: neighbours along the strip step √(1 − b²) at least',
    year: 'n.d.',
    where: 'elementary; the proof stands in the formula’s header',
    grade: 'published-in-part'
  },
  'square-optima': {
    body: 'P. G. Szabó, M. Cs. Markót, T. Csendes, E. Specht, L. G. Casado and I. García; M. Cs. Markót',
    title:
      'New approaches to circle packing in a square; Improved interval methods for circle packing in the unit square',
    year: '2007, 2021',
    where:
      'table of the packings proven best (2 to 30 circles and 36); Journal of Global Optimization 81, pages 773 to 803 (31 to 33); radii as E. Specht lists them',
    grade: 'published'
  },
  'florian-1960': {
    body: 'A. Florian, Rendiconti del Circolo Matematico di Palermo',
    title: 'Ausfüllung der Ebene durch Kreise',
    year: '1960',
    where: 'series 2, volume 9: greatest density of circles whose radii lie between two bounds (from memory)',
    grade: 'from-memory'
  },
  'core-greedy': {
    body: 'derived',
    title: 'Core reuse as a transversal matroid: greedy by falling size with augmenting paths is exact',
    year: 'n.d.',
    where: 'elementary; checked against enumeration',
    grade: 'published-in-part'
  }
} satisfies Record<string, SourceEntry>
