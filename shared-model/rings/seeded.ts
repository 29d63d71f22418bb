/**
 * A small seeded generator, so that the same sheet and work give the same layout: a Weyl sequence in 32 bits, each term
 * mixed by two rounds of multiply and shift. Good enough to shuffle starting points; not for anything secret.
 */
export interface Seeded {
  /** From 0 up to, not including, 1. */
  readonly share: () => number
  /** A whole number from 0 up to, not including, `below`. */
  readonly whole: (below: number) => number
}

export const seeded = (seed: number): Seeded => {
  let state = seed >>> 0
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  return { share, whole: (below) => Math.floor(share() * below) }
}
