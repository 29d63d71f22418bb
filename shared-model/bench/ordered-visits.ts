import { type DrillWork, doable } from './drill-work'
import type { PieceKind } from './piece-kinds'

/** A kind of piece with an order of its own, or one that waits for others, as families of sets of tools see it. */
export interface OrderedVisits {
  readonly count: number
  readonly ideal: number
  /** By set: the bit that stands for those of its tools that the piece needs; 0 where they do nothing more than one tool. */
  readonly bitOf: Int32Array
  /** The fewest stages with the sets that these bits stand for, in any order and as often as one likes, and single tools. */
  readonly visits: (bits: number) => number
  /** The piece can have work both right before and right after the change from a set to another. */
  readonly carries: (from: number, to: number) => boolean
}

/** Bits of one number. */
const MOST_TRACES = 30

/** The shortest way through what is done on one piece; where its sets are too many to tell apart, the ideal. */
export const orderedVisits = (
  work: DrillWork,
  kind: PieceKind,
  sets: readonly (readonly number[])[]
): OrderedVisits => {
  const piece = work.pieces[kind.pieces[0] ?? 0]
  const ideal = kind.ideal[0] ?? 0
  const own = new Set(piece?.operations.map(({ tool }) => tool))
  const traces: { readonly key: string; readonly set: number }[] = []
  const bitOf = Int32Array.from(sets, (tools, set) => {
    const shared = tools.filter((tool) => own.has(tool))
    if (shared.length < 2) return 0
    const key = shared.join()
    const known = traces.findIndex((trace) => trace.key === key)
    return 1 << Math.min(MOST_TRACES, known >= 0 ? known : traces.push({ key, set }) - 1)
  })
  const isTold = traces.length <= MOST_TRACES && piece !== undefined
  const masks = Array.from({ length: kind.full + 1 }, (_, mask) => mask)
  const alone = isTold ? [...own].map((tool) => Int32Array.from(masks, (mask) => doable(piece, mask, [tool]))) : []
  const known = new Map<number, number>()
  const shortest = (bits: number): number => {
    const steps: Int32Array[] = [...alone]
    for (const [bit, { set }] of traces.entries()) if (bits & (1 << bit)) steps.push(kind.after[set] as Int32Array)
    const least = new Uint8Array(kind.full + 1).fill(FAR)
    least[0] = 0
    // What is done only grows, so every way to a state comes from a lesser one.
    for (let mask = 0; mask < kind.full; mask++) {
      const next = (least[mask] as number) + 1
      if (next > FAR) continue
      for (const step of steps) {
        const after = step[mask] as number
        if (next < (least[after] as number) && after !== mask) least[after] = next
      }
    }
    return least[kind.full] as number
  }
  return {
    count: kind.count,
    ideal,
    bitOf,
    visits: (bits) => {
      if (!isTold) return ideal
      const old = known.get(bits)
      if (old !== undefined) return old
      const visits = shortest(bits)
      known.set(bits, visits)
      return visits
    },
    carries: (from, to) => {
      const first = kind.after[from] as Int32Array
      const second = kind.after[to] as Int32Array
      return masks.some((mask) => {
        const done = first[mask] as number
        return done !== mask && second[done] !== done
      })
    }
  }
}

const FAR = 250
