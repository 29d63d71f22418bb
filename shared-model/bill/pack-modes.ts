import type { PackOffer } from './offer'

/** One way to take an offer: at least `from` packs, each at one price. */
export interface PackMode {
  readonly from: number
  readonly priceMinor: number
  /** Amount of one pack in whole steps. */
  readonly steps: number
}

/** The list price from the least order on, and each cheaper break from its number of packs on. */
export function packModes(offer: PackOffer, steps: number): readonly PackMode[] {
  const least = Math.max(1, offer.leastPacks)
  const list = offer.offer.priceMinor
  const modes = list === null ? [] : [{ from: least, priceMinor: list, steps }]
  for (const part of offer.breaks)
    modes.push({ from: Math.max(least, part.fromPacks), priceMinor: part.priceMinor, steps })
  return modes
}
