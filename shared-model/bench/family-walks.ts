import type { Budget } from '../outcome'
import type { DrillWork } from './drill-work'
import { type FamilyStays, familyStays } from './family-stays'
import { isInTurn, type PieceKind } from './piece-kinds'
import type { ToolNeeds } from './tool-needs'

/** How a search through the walks over one family ended. */
export type WalksEnd = 'all-seen' | 'enough' | 'out-of-work'

/** More stages than any kind can need. */
const NEVER = 120

/**
 * Goes through all walks over the sets of a family, each at least once, with a number of changes, that could take less
 * than `least()`; `found` gets each with the fewest stages that every kind needs on it and the changes over which no
 * piece could ever stay, and says whether that is enough. One unit of work is one set put to a walk.
 */
export const familyWalks = (
  work: DrillWork,
  kinds: readonly PieceKind[],
  sets: readonly (readonly number[])[],
  needs: ToolNeeds,
  budget: Budget,
  perFamily: number
): ((
  family: readonly number[],
  changes: number,
  least: () => number,
  found: (walk: readonly number[], visits: readonly number[], missed: number, stays: FamilyStays | null) => boolean
) => WalksEnd) => {
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0)
  const steps = stepsOf(kinds, sets)
  /** Kinds for which it matters in which order the sets come. */
  const inTurn = kinds.flatMap((kind, k) => (isInTurn(kind) ? [k] : []))
  const waited = new Set(kinds.flatMap(({ waits }) => waits.map(({ kind }) => kind)))
  const followed = kinds.flatMap((_, k) => (inTurn.includes(k) || waited.has(k) ? [k] : []))
  let worked = 0
  return (family, changes, least, found) => {
    const enough = worked + perFamily
    const walk: number[] = []
    const missing = new Set(family)
    const times = new Map<number, number>()
    const visits = kinds.map((kind) => {
      let row = new Uint8Array(kind.full + 1).fill(NEVER, 1)
      for (const set of family) row = stage(row, kind.after[set] as Int32Array)
      return row[kind.full] as number
    })
    const anyOrder = kinds.reduce(
      (sum, { count }, k) => (inTurn.includes(k) ? sum : sum + count * (visits[k] as number)),
      0
    )
    const stays = changes === family.length - 1 ? familyStays(needs, family) : null
    const lacking: (readonly [number, number])[] = []
    const layers: Uint8Array[][] = []
    const reached: number[][] = []
    const advance = (depth: number, set: number): void => {
      const old =
        layers[depth - 1] ?? followed.map((k) => new Uint8Array((kinds[k] as PieceKind).full + 1).fill(NEVER, 1))
      const before = reached[depth - 1] ?? kinds.map(() => 0)
      const now = [...before]
      reached[depth] = now
      layers[depth] = followed.map((k, i) => {
        const kind = kinds[k] as PieceKind
        const row = old[i] as Uint8Array
        const table = kind.after[set] as Int32Array
        if (!kind.waits.every((wait) => ((now[wait.kind] ?? 0) & wait.bit) !== 0)) return row
        now[k] = table[before[k] as number] as number
        return stage(row, table)
      })
    }
    /** Least cost of a walk that goes on from here; null: it cannot end in time. */
    const boundOf = (depth: number, missed: number): number | null => {
      const left = changes - depth
      if (
        missing.size > left ||
        turnsLeft(kinds, followed, reached[depth] ?? [], sets[walk[depth] ?? 0] ?? []) > left
      ) {
        return null
      }
      let needed = anyOrder
      for (const [i, k] of followed.entries()) {
        const kind = kinds[k] as PieceKind
        const row = layers[depth]?.[i] as Uint8Array
        let best = NEVER
        for (let mask = 0; mask < row.length; mask++) {
          const ideal = kind.ideal[mask] as number
          if (ideal <= left) best = Math.min(best, (row[mask] as number) + ideal)
        }
        if (best >= NEVER) return null
        if (inTurn.includes(k)) needed += kind.count * best
      }
      const lost = Math.max(missed, stays?.lost(lacking) ?? 0)
      return changes * work.changeS + work.mountS * Math.max(pieces, needed - (changes - lost))
    }
    const visit = (depth: number, set: number, missed: number): WalksEnd => {
      if (worked >= budget.work || budget.stop()) return 'out-of-work'
      if (worked >= enough) return 'enough'
      worked += 1
      walk[depth] = set
      walk.length = depth + 1
      const before = times.get(set) ?? 0
      times.set(set, before + 1)
      missing.delete(set)
      advance(depth, set)
      const bound = boundOf(depth, missed)
      let end: WalksEnd = 'all-seen'
      if (bound !== null && bound < least()) {
        if (depth < changes) end = onward(depth, set, missed)
        else {
          for (const [i, k] of followed.entries()) {
            if (inTurn.includes(k)) visits[k] = layers[depth]?.[i]?.[kinds[k]?.full ?? 0] ?? NEVER
          }
          if (found([...walk], [...visits], missed, stays)) end = 'enough'
        }
      }
      times.set(set, before)
      if (before === 0 && family.includes(set)) missing.add(set)
      walk.length = depth
      return end
    }
    const onward = (depth: number, set: number, missed: number): WalksEnd => {
      const spare = changes - depth > missing.size
      const near = (steps[set] ?? []).filter((step) => missing.has(step.set) || (spare && family.includes(step.set)))
      const next = near.map((step) => ({
        ...step,
        lacks: stays?.lacks(set, step.set) === true,
        // To a set with few ways on first: later it could not be left, nor come to.
        waysOn: (steps[step.set] ?? []).reduce((sum, other) => sum + (missing.has(other.set) ? 1 : 0), 0)
      }))
      next.sort((a, b) => Number(a.lacks) - Number(b.lacks) || a.waysOn - b.waysOn || a.set - b.set)
      for (const step of next) {
        if (step.lacks) lacking.push([set, step.set])
        const end = visit(depth + 1, step.set, missed + (step.carries ? 0 : 1))
        if (step.lacks) lacking.pop()
        if (end !== 'all-seen') return end
      }
      return 'all-seen'
    }
    for (const set of family) {
      const end = visit(0, set, 0)
      if (end !== 'all-seen') return end
    }
    return 'all-seen'
  }
}

/** The fewest stages to each state of a piece, with one stage more. */
const stage = (row: Uint8Array, table: Int32Array): Uint8Array<ArrayBuffer> => {
  const next = row.slice()
  for (let mask = 0; mask < row.length; mask++) {
    const visits = (row[mask] as number) + 1
    if (visits >= NEVER) continue
    const after = table[mask] as number
    if (after !== mask && visits < (next[after] as number)) next[after] = visits
  }
  return next
}

/** The sets that one change leads to, and whether any piece could be worked on right before and right after it. */
const stepsOf = (kinds: readonly PieceKind[], sets: readonly (readonly number[])[]) =>
  sets.map((tools, from) =>
    sets.flatMap((other, set) => {
      if (other.filter((tool) => !tools.includes(tool)).length !== 1) return []
      const carries = kinds.some(({ count, full, after }) => {
        if (count === 0) return false
        for (let mask = 0; mask <= full; mask++) {
          const first = after[from]?.[mask] ?? mask
          if (first !== mask && (after[set]?.[first] ?? first) !== first) return true
        }
        return false
      })
      return [{ set, carries }]
    })
  )

/** Changes that are needed at least: with one drill each tool as often as its longest chain takes it up anew. */
const turnsLeft = (
  kinds: readonly PieceKind[],
  followed: readonly number[],
  reached: readonly number[],
  fitted: readonly number[]
): number => {
  let sum = 0
  const tools = kinds[0]?.turns.length ?? 0
  for (let tool = 0; tool < tools; tool++) {
    const isFitted = fitted.includes(tool)
    if (isFitted && fitted.length > 1) continue
    let most = 0
    for (const k of followed) {
      const kind = kinds[k] as PieceKind
      most = Math.max(most, kind.turns[tool]?.[reached[k] as number] ?? 0)
    }
    sum += fitted.length > 1 ? Math.min(1, most) : most
  }
  return sum
}
