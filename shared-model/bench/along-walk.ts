import { fitsFor, sorted } from './by-tool'
import type { DrillCell, DrillWork } from './drill-work'
import type { PieceKind } from './piece-kinds'

/** Stages of a walk (by set of tools) that a piece is clamped in, and what is done after each. */
interface Visit {
  readonly stage: number
  readonly before: number
  readonly done: number
}

/**
 * The visits of one piece of a kind along a walk, as few as `most`, the earliest such; with `carried` it is worked on in
 * that stage and in the next. null: there are none.
 */
const coverOf = (
  kind: PieceKind,
  walk: readonly number[],
  most: number,
  carried: number | null,
  from = 0
): readonly Visit[] | null => {
  const seek = (stage: number, done: number, left: number): readonly Visit[] | null => {
    const mustStill = carried !== null && stage <= carried + 1
    if (done === kind.full) return mustStill ? null : []
    if (stage >= walk.length || (kind.ideal[done] ?? 0) > left) return null
    const after = kind.after[walk[stage] ?? 0]?.[done] ?? done
    const must = carried !== null && (stage === carried || stage === carried + 1)
    if (after !== done && stage >= from) {
      const rest = seek(stage + 1, after, left - 1)
      if (rest) return [{ stage, before: done, done: after }, ...rest]
    }
    return must ? null : seek(stage + 1, done, left)
  }
  return seek(0, 0, most)
}

/** A piece stays clamped from a stage of the walk to the next; by stage, the kinds that can at no further clamping. */
export const carriers = (
  kinds: readonly PieceKind[],
  walk: readonly number[],
  visits: readonly number[]
): readonly (readonly number[])[] =>
  walk
    .slice(1)
    .map((_, stage) =>
      kinds.flatMap((kind, k) => (kind.count > 0 && coverOf(kind, walk, visits[k] ?? 0, stage) !== null ? [k] : []))
    )

/**
 * At how many changes a piece of a kind can stay, of those at which none can in its fewest stages, beyond the clampings
 * that this takes more. A piece stays over a change only if it has work for the tool then fitted.
 */
export const staysBeyond = (
  kind: PieceKind,
  sets: readonly (readonly number[])[],
  walk: readonly number[],
  visits: number,
  lacks: readonly boolean[]
): number => {
  const masks = kind.full + 1
  /** By whether the piece was clamped in the stage before, then by what is done: clampings less changes stayed over. */
  let cost = new Int16Array(2 * masks).fill(FAR)
  cost[0] = 0
  for (const [stage, set] of walk.entries()) {
    const next = new Int16Array(2 * masks).fill(FAR)
    const before = sets[walk[stage - 1] ?? set] ?? []
    const fitted = (sets[set] ?? []).find((tool) => !before.includes(tool))
    const stays = lacks[stage - 1] === true && fitted !== undefined && (kind.turns[fitted]?.[0] ?? 0) > 0
    for (let at = 0; at < 2 * masks; at++) {
      const so = cost[at] as number
      if (so >= FAR) continue
      const mask = at % masks
      next[mask] = Math.min(next[mask] as number, so)
      const after = masks + (kind.after[set]?.[mask] ?? mask)
      next[after] = Math.min(next[after] as number, so + (stays && at >= masks ? 0 : 1))
    }
    cost = next
  }
  const least = Math.min(cost[kind.full] as number, cost[masks + kind.full] as number)
  return Math.max(0, visits - least)
}

const FAR = 10_000

/** The order that a walk gives: every piece in its fewest stages, at each boundary another piece kept clamped. */
export const alongWalk = (
  work: DrillWork,
  kinds: readonly PieceKind[],
  sets: readonly (readonly number[])[],
  walk: readonly number[],
  visits: readonly number[],
  able: readonly (readonly number[])[]
): readonly DrillCell[] | null => {
  const waited = new Set(kinds.flatMap(({ waits }) => waits.map(({ kind }) => kind)))
  const single = kinds.map(({ pieces, waits }, k) =>
    waits.length > 0 || waited.has(k)
      ? []
      : pieces.flatMap((piece) =>
          Array.from({ length: work.pieces[piece]?.count ?? 0 }, (_, serial) => ({ piece, serial }))
        )
  )
  const kept = matched(able, single)
  const keptBy = new Map(kept.flatMap((one, stage) => (one === null ? [] : [[one, stage] as const])))
  const stages: { readonly name: string; readonly piece: number; readonly serial: number; readonly visit: Visit }[][] =
    walk.map(() => [])
  const doneIn = new Map<string, number>()
  for (const [k, kind] of kinds.entries()) {
    const from = kind.waits.reduce((late, wait) => Math.max(late, doneIn.get(`${wait.kind} ${wait.bit}`) ?? 0), 0)
    for (const piece of kind.pieces) {
      for (let serial = 0; serial < (work.pieces[piece]?.count ?? 0); serial++) {
        const name = `${piece} ${serial}`
        const cover = fewest(kind, walk, visits[k] ?? 0, keptBy.get(name) ?? null, from)
        if (!cover) return null
        for (const visit of cover) {
          stages[visit.stage]?.push({ name, piece, serial, visit })
          for (let bit = 1; bit <= visit.done; bit <<= 1) {
            if (visit.done & bit && !(visit.before & bit)) doneIn.set(`${k} ${bit}`, visit.stage)
          }
        }
      }
    }
  }
  const drills: number[] = []
  let fits: DrillCell['fits'] = []
  return stages.flatMap((here, stage) => {
    fits = [...fits, ...fitsFor(drills, sets[walk[stage] ?? 0] ?? [])]
    const at = (boundary: number) => here.find(({ name }) => name === kept[boundary])
    const first = at(stage - 1)
    const last = at(stage)
    const between = here.filter((one) => one !== first && one !== last).sort((a, b) => a.piece - b.piece)
    const inTurn = [...(first ? [first] : []), ...between, ...(last && last !== first ? [last] : [])]
    return inTurn.map(({ piece, serial, visit }, i): DrillCell => {
      const own = work.pieces[piece]
      const operations = own
        ? sorted(
            own,
            own.operations.flatMap((_, o) => (((visit.done & ~visit.before) >> o) & 1 ? [o] : []))
          )
        : []
      const fitted = i === 0 ? fits : []
      fits = i === 0 ? [] : fits
      return {
        piece,
        serial,
        operations,
        drills: operations.map((o) => drills.indexOf(own?.operations[o]?.tool ?? 0)),
        mounts: !(i === 0 && first),
        fits: fitted
      }
    })
  })
}

const fewest = (
  kind: PieceKind,
  walk: readonly number[],
  visits: number,
  carried: number | null,
  from: number
): readonly Visit[] | null => {
  for (let most = visits; most <= walk.length; most++) {
    const cover = coverOf(kind, walk, most, carried, from)
    if (cover) return cover
  }
  return null
}

/** A piece of its own for as many boundaries as can be: a greatest matching by paths that free a piece for another. */
const matched = (
  able: readonly (readonly number[])[],
  single: readonly (readonly { readonly piece: number; readonly serial: number }[])[]
): readonly (string | null)[] => {
  const stageOf = new Map<string, number>()
  const place = (stage: number, tried: Set<string>): boolean => {
    for (const k of able[stage] ?? []) {
      // Alike pieces beyond one for each boundary cannot help.
      for (const { piece, serial } of (single[k] ?? []).slice(0, able.length)) {
        const name = `${piece} ${serial}`
        if (tried.has(name)) continue
        tried.add(name)
        const other = stageOf.get(name)
        if (other !== undefined && !place(other, tried)) continue
        stageOf.set(name, stage)
        return true
      }
    }
    return false
  }
  for (const stage of able.keys()) place(stage, new Set())
  const names = new Map([...stageOf].map(([name, stage]) => [stage, name]))
  return able.map((_, stage) => names.get(stage) ?? null)
}
