import type { OrderedVisits } from './ordered-visits'
import { bits, type ToolNeeds } from './tool-needs'

/** The fewest stages that all pieces need with the sets of a family, level by level as it grows. */
export interface FamilyVisits {
  /** Adds a set to the family of a level: the stages needed with the family of the next level. */
  readonly add: (level: number, set: number) => number
  /** What sets could save the family of a level at most. */
  readonly gains: (level: number, from: number) => Gains
  /** The family has every tool that is needed. */
  readonly isWhole: (level: number) => boolean
  /** Over how many changes a piece can stay clamped and save a clamping by each. */
  readonly useful: (level: number) => number
}

export interface Gains {
  /** By set: on all pieces, and on those alone that one set can do. */
  readonly each: Float64Array
  readonly small: Float64Array
  /** Of all sets together, on the pieces that take more than one set and on those with an order of their own. */
  readonly large: number
}

interface Level {
  /** By place of the tools: the fewest sets that cover them. */
  readonly cover: Uint8Array
  readonly traces: Int32Array
  readonly visits: Uint8Array
  tools: number
}

/** Tools of which a set has two or more: their place, and the place of what is left of them without the set's. */
interface Covered {
  readonly places: Int32Array
  readonly without: Int32Array
}

/**
 * For pieces with no order of their own the fewest sets that cover their tools: cover(m) with a set more is the least of
 * cover(m) and 1 + cover(m without its tools); a single tool always covers itself, a bound until the family is whole.
 * Worked out for the tools of such pieces and every part of them only.
 * For pieces with an order the shortest way through what is done, with the sets in any order.
 */
export const familyVisits = (needs: ToolNeeds): FamilyVisits => {
  const { setMasks, ordered, whole } = needs
  const size = bits(setMasks[0] ?? 1)
  const masks = partsOf(needs.free.map(({ mask }) => mask))
  const placeOf = new Map(masks.map((mask, place) => [mask, place]))
  const alone = Uint8Array.from(masks, bits)
  const free = needs.free.map(({ mask, count }) => {
    const tools = bits(mask)
    const beyond = Uint8Array.from(setMasks, (own) => Math.max(1, bits(mask & own)) - 1)
    return { place: placeOf.get(mask) as number, tools, ideal: Math.ceil(tools / size), count, beyond }
  })
  const covered: Covered[] = []
  const coveredBy = (set: number): Covered => {
    const known = covered[set]
    if (known) return known
    const own = setMasks[set] as number
    const places = Int32Array.from(masks.flatMap((mask, place) => (bits(mask & own) > 1 ? [place] : [])))
    const without = places.map((place) => placeOf.get((masks[place] as number) & ~own) as number)
    const fresh = { places, without }
    covered[set] = fresh
    return fresh
  }
  const levels: Level[] = []
  const at = (level: number): Level => {
    const known = levels[level]
    if (known) return known
    const fresh: Level = {
      cover: alone.slice(),
      traces: new Int32Array(ordered.length),
      visits: Uint8Array.from(ordered, (kind) => kind.visits(0)),
      tools: 0
    }
    levels[level] = fresh
    return fresh
  }
  return {
    add: (level, set) => {
      const { cover, traces, tools } = at(level)
      const next = at(level + 1)
      const { places, without } = coveredBy(set)
      next.tools = tools | (setMasks[set] as number)
      next.cover.set(cover)
      for (let i = 0; i < places.length; i++) {
        const place = places[i] as number
        const after = 1 + (cover[without[i] as number] as number)
        if (after < (cover[place] as number)) next.cover[place] = after
      }
      let sum = 0
      for (const { place, count } of free) sum += count * (next.cover[place] as number)
      for (let k = 0; k < ordered.length; k++) {
        const kind = ordered[k] as OrderedVisits
        const trace = (traces[k] as number) | (kind.bitOf[set] as number)
        const visits = kind.visits(trace)
        next.traces[k] = trace
        next.visits[k] = visits
        sum += kind.count * visits
      }
      return sum
    },
    gains: (level, from) => {
      const { cover, visits } = at(level)
      const each = new Float64Array(setMasks.length)
      const small = new Float64Array(setMasks.length)
      let large = 0
      for (const { place, ideal, count, beyond } of free) {
        const left = count * ((cover[place] as number) - ideal)
        if (left === 0) continue
        const isLarge = ideal > 1
        if (isLarge) large += left
        for (let set = from; set < setMasks.length; set++) {
          const gain = Math.min(left, count * (beyond[set] as number))
          each[set] = (each[set] as number) + gain
          if (!isLarge) small[set] = (small[set] as number) + gain
        }
      }
      for (let k = 0; k < ordered.length; k++) {
        const { bitOf, count, ideal } = ordered[k] as OrderedVisits
        const left = count * ((visits[k] as number) - ideal)
        if (left === 0) continue
        large += left
        for (let set = from; set < setMasks.length; set++) {
          if (bitOf[set] !== 0) each[set] = (each[set] as number) + left
        }
      }
      return { each, small, large }
    },
    isWhole: (level) => at(level).tools === whole,
    useful: (level) => {
      const { cover, visits } = at(level)
      let sum = 0
      for (const { place, tools, count } of free) {
        const stages = cover[place] as number
        let stays = 0
        while (stages - stays > 1 && Math.ceil((tools - stays - 1) / size) <= stages - stays - 1) stays += 1
        sum += count * stays
      }
      for (let k = 0; k < ordered.length; k++) sum += (ordered[k] as OrderedVisits).count * ((visits[k] as number) - 1)
      return sum
    }
  }
}

/** Masks and every part of them, each once. */
const partsOf = (masks: readonly number[]): readonly number[] => {
  const parts = new Set([0])
  for (const mask of masks) for (let part = mask; part > 0; part = (part - 1) & mask) parts.add(part)
  return [...parts]
}
