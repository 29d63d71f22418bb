import type { SourceEntry } from '../source-entry'

/** Sources of cutter speeds. */
export const benchSources = {
  'speed-article': {
    body: 'trade magazine article',
    title: 'Hole saws with hand drills: rpm from surface speed; 80 ft/min in steel, 3/4 in printed as 410 rpm',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published'
  },
  'speed-table': {
    body: 'saw maker support page',
    title: 'Recommended operating speeds for bi-metal hole saws by diameter and material',
    year: 'n.d.',
    where: 'aluminium column times circumference: 133 to 137 ft/min from 1 to 2.5 in',
    grade: 'published-in-part'
  },
  'speed-plastics': {
    body: 'common practice',
    title: 'Plastics and foam with a hole saw: no faster than the aluminium column, slower as the saw grows',
    year: 'n.d.',
    where: 'no neutral published figure found for a hand-held drill',
    grade: 'common-practice'
  }
} satisfies Record<string, SourceEntry>
