import { describe, expect, it } from 'vitest'
import { LIMIT_MS, SAMPLE, SEED } from './proving'
import { randomDesigns } from './random-designs'
import { SHARED_PROOFS } from './shares'
import { told } from './tally'

describe('any design and workshop that the parser passes', () => {
  it(
    'work out without a throw, a NaN or an Infinity, lose no length, piece or litre, and have words for all findings',
    () => {
      const runs = SAMPLE(SHARED_PROOFS['random-designs']?.full ?? 0)
      const tally = randomDesigns(SEED, runs)
      expect(tally.counts['worked out']).toBe(runs)
      console.log(`random designs: seed ${SEED}: ${told(tally)}`)
    },
    LIMIT_MS
  )
})
