import { describe, expect, it } from 'vitest'
import { mutatedDesigns, mutatedWorkshops } from './mutated'
import { LIMIT_MS, SAMPLE, SEED } from './proving'
import { SHARED_PROOFS } from './shares'
import { longestMs, told } from './tally'

/** No document holds the program up longer than this, ms of a processor; the bench has the true figure. */
const LONGEST_MS = 20_000

describe('a document that was spoilt', () => {
  it.each([
    ['design', 'mutated-designs', mutatedDesigns],
    ['workshop', 'mutated-workshops', mutatedWorkshops]
  ] as const)(
    'as a %s is refused by name, or is worked out in figures that mean something',
    (what, proof, share) => {
      const runs = SAMPLE(SHARED_PROOFS[proof]?.full ?? 0)
      const tally = share(SEED, runs)
      expect(tally.counts.accepted).toBeGreaterThan(runs / 50)
      expect(longestMs(tally)).toBeLessThan(LONGEST_MS)
      console.log(`mutated documents: seed ${SEED}, ${runs} ${what}s: ${told(tally)}`)
    },
    LIMIT_MS
  )
})
