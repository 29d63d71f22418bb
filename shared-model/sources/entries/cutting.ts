import type { SourceEntry } from '../source-entry'

/** Sources of kerf arithmetic and of the bounds on a cut plan. */
export const cuttingSources = {
  'cut-kerf-arithmetic': {
    body: 'trade page on sawing boards',
    title: 'Worked example of saw kerf: four 24 in pieces from an 8 ft board at a 1/8 in kerf do not fit',
    year: '2025',
    where: 'worked example; the inequality follows from counting cuts',
    grade: 'published-in-part'
  },
  'gilmore-gomory-1961': {
    body: 'P. C. Gilmore and R. E. Gomory, Operations Research',
    title: 'A linear programming approach to the cutting-stock problem',
    year: '1961',
    where: 'volume 9(6), pages 849 to 859: patterns made as needed by a knapsack; any dual feasible vector is a bound',
    grade: 'published'
  },
  'farley-1990': {
    body: 'A. A. Farley, Operations Research',
    title: 'A note on bounding a class of linear programming problems, including cutting stock problems',
    year: '1990',
    where: 'volume 38(5), pages 922 to 923 (from memory)',
    grade: 'from-memory'
  }
} satisfies Record<string, SourceEntry>
