import type { SourceEntry } from '../source-entry'

/** Sources of what a batch needs and how it is bought. */
export const billSources = {
  'exact-packs': {
    body: 'none',
    title: 'Least-cost cover of an amount by whole packs, by dynamic programming over the amount',
    year: 'n.d.',
    where: 'own derivation, proved against complete enumeration',
    grade: 'common-practice'
  },
  'sealant-yield': {
    body: 'sealant distributor page',
    title: 'Sealant yield: run of a bead from one cartridge is its volume divided by the bead section',
    year: 'n.d.',
    where: 'yield in feet = 18 / (cubic inches a foot)',
    grade: 'common-practice'
  },
  'cement-joints': {
    body: 'pipe maker manual (laboratory estimates by a cement maker)',
    title: 'Plastics technical manual page: average joints per quart; primer twice as many',
    year: 'n.d.',
    where: 'average joints per quart',
    grade: 'published-in-part'
  }
} as const satisfies Record<string, SourceEntry>
