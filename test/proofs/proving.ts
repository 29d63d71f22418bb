/** Full counts under `npm run prove`; a seeded sample of two in a hundred otherwise. */
export const PROVE = process.env.SILLWRIGHT_PROVE === '1'
export const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_261_125)

export const counted = (full: number): number => (PROVE ? full : SAMPLE(full))

/** Two in a hundred. */
export const SAMPLE = (full: number): number => Math.ceil(full / 50)

/** Time for a proof: what it needs at full count on a slow machine, ms. */
export const LIMIT_MS = PROVE ? 7_200_000 : 900_000

/** Repeatable numbers from 0 up to 1: xorshift32, good enough to pick moments and places. */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0 || 1
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    state >>>= 0
    return state / 2 ** 32
  }
}
