import { divideRatio, multiplyRatio, ratioFromDecimal, roundRatio } from '../units'
import type { Need } from './bill-input'
import type { PackOffer, ShelfItem } from './offer'

export interface ShelfDraw {
  readonly amount: number
  readonly worthMinor: number
  /** The shelf without what was taken. */
  readonly shelf: readonly ShelfItem[]
}

/** Takes what serves a need from the shelf, item by item, each with its share of worth; at most `amount`. */
export function drawFromShelf(shelf: readonly ShelfItem[], need: Wanted, amount: number): ShelfDraw {
  let open = amount
  let worthMinor = 0
  const left: ShelfItem[] = []
  for (const item of shelf) {
    const taken = suits(need, item) ? Math.min(open, item.amount) : 0
    if (taken <= 0) {
      left.push(item)
      continue
    }
    const worth = portion(item.worthMinor ?? 0, taken, item.amount)
    open = settle(open - taken)
    worthMinor += worth
    const rest = settle(item.amount - taken)
    if (rest > 0)
      left.push(item.worthMinor === undefined ? { ...item, amount: rest } : restOf(item, rest, item.worthMinor - worth))
  }
  return { amount: settle(amount - open), worthMinor, shelf: left }
}

const restOf = (item: ShelfItem, amount: number, worthMinor: number): ShelfItem => ({ ...item, amount, worthMinor })

type Wanted = Pick<Need, 'need' | 'partId'>

/** An offer or shelf item serves a need: the same part, a cup for a riser's cup, or a consumable named for no part. */
export function suits(need: Wanted, other: Pick<PackOffer, 'need' | 'partId'>): boolean {
  const kind = (of: string) => (of === 'riser-cup' ? 'cup' : of)
  if (kind(need.need) !== kind(other.need)) return false
  if (need.partId === other.partId) return true
  return other.partId === '' && CONSUMABLES.has(need.need) && !NAMED_ONLY.has(need.partId)
}

const CONSUMABLES: ReadonlySet<string> = new Set(['sealant', 'cement', 'support', 'label', 'packing', 'medium'])
const NAMED_ONLY: ReadonlySet<string> = new Set(['tape', 'primer'])

/** The share `part` of `whole` of an amount of money, half up. */
export function portion(minor: number, part: number, whole: number): number {
  const share = divideRatio(ratioFromDecimal(part), ratioFromDecimal(whole))
  return Math.min(minor, roundRatio(multiplyRatio(ratioFromDecimal(minor), share), 'half-up'))
}

/** Takes the binary noise off a sum of decimals. */
export const settle = (amount: number): number => Math.round(amount * 1e6) / 1e6
