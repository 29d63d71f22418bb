import { SHARED_PROOFS } from './shares'

/** Run as a process of its own: does the shares it is sent, one at a time, and answers each with its tally. */
process.on('message', ({ proof, seed, runs }: { proof: string; seed: number; runs: number }) => {
  try {
    const tally = SHARED_PROOFS[proof]?.share(seed, runs)
    process.send?.(tally === undefined ? { failed: `there is no proof ${proof}` } : { tally })
  } catch (error) {
    process.send?.({ failed: error instanceof Error ? error.message : String(error) })
  }
})
