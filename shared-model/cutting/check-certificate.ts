/**
 * Verifies a lower bound from its certificate, with nothing of the solver's: that the parts leave no plan out, and that in
 * each part no way of cutting a bar is worth more than the bar costs. Whole numbers throughout.
 */
import type { BoundCertificate, BoundPart } from './certificate'
import { type CutInstance, worthLeft } from './instance'

export interface CertificateCheck {
  readonly valid: boolean
  /** The bound as worked out here. */
  readonly bound: number
  readonly fault: 'none' | 'figures-not-whole' | 'plans-left-out' | 'pattern-worth-more-than-bar' | 'bound-not-reached'
}

export const checkCertificate = (instance: CutInstance, certificate: BoundCertificate): CertificateCheck => {
  const { scale, parts } = certificate
  const step = stepOf(instance)
  if (!allWhole(instance, certificate)) return { valid: false, bound: 0, fault: 'figures-not-whole' }
  if (!leavesNothingOut(instance, parts)) return { valid: false, bound: 0, fault: 'plans-left-out' }
  let bound = Number.POSITIVE_INFINITY
  for (const part of parts) {
    if (!holdsInPart(instance, part, scale)) return { valid: false, bound: 0, fault: 'pattern-worth-more-than-bar' }
    bound = Math.min(bound, Math.ceil(Math.ceil(totalOf(instance, part) / scale) / step) * step)
  }
  if (!Number.isFinite(bound)) return { valid: false, bound: 0, fault: 'plans-left-out' }
  return bound >= certificate.bound
    ? { valid: true, bound, fault: 'none' }
    : { valid: false, bound, fault: 'bound-not-reached' }
}

/** Without worth for leftovers every total is a multiple of the costs' common divisor. */
const stepOf = (instance: CutInstance): number => {
  if (instance.stock.some(({ keep }) => keep !== null)) return 1
  let step = 0
  for (const { cost } of instance.stock) for (let b = cost; b > 0; ) [step, b] = [b, step % b]
  return step || 1
}

const allWhole = (instance: CutInstance, { scale, parts }: BoundCertificate): boolean =>
  Number.isSafeInteger(scale) &&
  scale > 0 &&
  parts.every(
    (part) =>
      [part.pieceValue, part.mostValue, part.leastValue, part.least].every((list) =>
        list.every((n) => Number.isSafeInteger(n) && n >= 0)
      ) &&
      part.most.every((n) => n === null || (Number.isSafeInteger(n) && n >= 0)) &&
      part.pieceValue.length === instance.demand.length &&
      [part.mostValue, part.leastValue, part.least, part.most].every((list) => list.length === instance.stock.length)
  )

const totalOf = (instance: CutInstance, part: BoundPart): number => {
  let total = 0
  instance.demand.forEach(({ qty }, at) => {
    total += qty * (part.pieceValue[at] ?? 0)
  })
  instance.stock.forEach((_, at) => {
    const most = part.most[at] ?? null
    total += (part.least[at] ?? 0) * (part.leastValue[at] ?? 0)
    // Without a limit nothing may be taken off: `holdsInPart` refuses a value there.
    if (most !== null) total -= most * (part.mostValue[at] ?? 0)
  })
  return total
}

/** Fillings by rising length (grown by kerfs), each with its worth. */
interface Fillings {
  readonly grown: readonly number[]
  readonly worth: readonly number[]
}

/** No filling of a stock's bar may be worth more than the bar. */
const holdsInPart = (instance: CutInstance, part: BoundPart, scale: number): boolean => {
  const grouped = instance.demand.some(({ lotGroup }) => lotGroup !== null)
  const longest = Math.max(...instance.stock.map(({ length, trim }) => length - trim))
  const known = new Map<number, Fillings>()
  return instance.stock.every((bar, at) => {
    if ((part.most[at] ?? null) === null && (part.mostValue[at] ?? 0) > 0) return false
    const room = bar.length - bar.trim + instance.kerf
    const lot = grouped ? bar.lot : 0
    const filled = known.get(lot) ?? bestFillings(instance, part, grouped ? lot : null, longest + instance.kerf)
    known.set(lot, filled)
    const price = bar.cost * scale + (part.mostValue[at] ?? 0) - (part.leastValue[at] ?? 0)
    return filled.grown.every((grown, j) => {
      // A bar too short for this filling; and an empty bar need not be taken, unless bars are demanded.
      if (grown > room || (grown === 0 && (part.leastValue[at] ?? 0) === 0)) return true
      const left = Math.max(0, bar.length - bar.trim - grown)
      return (filled.worth[j] ?? 0) + scale * worthLeft(bar.keep, left) <= price
    })
  })
}

/** The best worth for each grown length that pieces add up to, where no shorter filling is worth as much. */
const bestFillings = (instance: CutInstance, part: BoundPart, lot: number | null, room: number): Fillings => {
  let best: Fillings = { grown: [0], worth: [0] }
  instance.demand.forEach((piece, at) => {
    const worth = part.pieceValue[at] ?? 0
    const elsewhere = piece.lotGroup !== null && (part.lotOfGroup[piece.lotGroup] ?? lot) !== lot
    if (worth === 0 || elsewhere) return
    const grown = piece.length + instance.kerf
    let left = Math.min(piece.qty, Math.floor(room / grown))
    for (let n = 1; left > 0; n *= 2) {
      const together = Math.min(n, left)
      left -= together
      best = withMore(best, grown * together, worth * together, room)
    }
  })
  return best
}

/** The fillings with and without some pieces more, in one list. */
const withMore = (best: Fillings, grown: number, worth: number, room: number): Fillings => {
  const merged: { grown: number[]; worth: number[] } = { grown: [], worth: [] }
  const { length } = best.grown
  let most = -1
  let old = 0
  let next = 0
  while (old < length || next < length) {
    const oldGrown = old < length ? (best.grown[old] ?? 0) : Number.POSITIVE_INFINITY
    const nextGrown = next < length ? (best.grown[next] ?? 0) + grown : Number.POSITIVE_INFINITY
    const takesNext = nextGrown < oldGrown
    const at = takesNext ? nextGrown : oldGrown
    if (at > room) break
    const value = takesNext ? (best.worth[next] ?? 0) + worth : (best.worth[old] ?? 0)
    if (takesNext) next++
    else old++
    if (value <= most) continue
    most = value
    if (merged.grown.at(-1) === at) merged.worth[merged.worth.length - 1] = value
    else {
      merged.grown.push(at)
      merged.worth.push(value)
    }
  }
  return merged
}

/**
 * Whether the parts cover every choice of bar counts and of lots. Along each stock the counts at which a part begins or
 * ends cut the choices into cells; a cell is one box, and some part must hold it whole.
 */
const leavesNothingOut = (instance: CutInstance, parts: readonly BoundPart[]): boolean => {
  const groups = Math.max(0, ...instance.demand.map(({ lotGroup }) => (lotGroup === null ? 0 : lotGroup + 1)))
  const lots = [...new Set(instance.stock.map(({ lot }) => lot))]
  const everyChoice = (group: number, left: readonly BoundPart[]): boolean => {
    if (group === groups) return covers(instance, left, 0)
    return lotsFor(instance, lots, group).every((lot) =>
      everyChoice(
        group + 1,
        left.filter((part) => (part.lotOfGroup[group] ?? lot) === lot)
      )
    )
  }
  return everyChoice(0, parts)
}

/** Lots with a bar that is long enough for each piece of the group; no plan takes it from another. */
const lotsFor = (instance: CutInstance, lots: readonly number[], group: number): readonly number[] => {
  const lengths = instance.demand
    .filter(({ lotGroup, qty }) => lotGroup === group && qty > 0)
    .map(({ length }) => length)
  const longest = Math.max(0, ...lengths)
  return lots.filter((lot) =>
    instance.stock.some((bar) => bar.lot === lot && bar.count !== 0 && bar.length - bar.trim >= longest)
  )
}

const covers = (instance: CutInstance, parts: readonly BoundPart[], stock: number): boolean => {
  if (parts.length === 0) return false
  const bar = instance.stock[stock]
  if (!bar) return true
  const end = bar.count ?? Number.POSITIVE_INFINITY
  const starts = new Set<number>([0])
  for (const part of parts) {
    starts.add(part.least[stock] ?? 0)
    starts.add((part.most[stock] ?? Number.POSITIVE_INFINITY) + 1)
  }
  return [...starts]
    .filter((from) => from <= end)
    .every((from) =>
      covers(
        instance,
        parts.filter(
          (part) => (part.least[stock] ?? 0) <= from && from <= (part.most[stock] ?? Number.POSITIVE_INFINITY)
        ),
        stock + 1
      )
    )
}
