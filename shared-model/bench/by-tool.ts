import type { DrillCell, DrillPiece, DrillWork, Stages } from './drill-work'
import { allDone, doable } from './drill-work'

export type Lateness = 'early' | 'late' | 'mixed'

/** One piece in one stage. */
interface Visit {
  readonly stage: number
  readonly operations: readonly number[]
}

/**
 * Drilling stage by stage: every piece is brought to the tools as seldom as it can be, and from each stage to the next
 * one piece stays clamped where one has work in both (in turn over the pieces, there and back).
 * `lateness` says which pieces take the later of equally few stages: none, all, or every second one.
 * null: these stages leave an operation undone.
 */
export const byTool = (work: DrillWork): ((stages: Stages) => (lateness: Lateness) => readonly DrillCell[] | null) => {
  const alike = work.pieces.map(({ operations }) => JSON.stringify(operations))
  return (stages) => {
    const known = new Map<string, readonly Visit[] | null>()
    const visitsOf = (p: number, from: number, late: boolean): readonly Visit[] | null => {
      const key = `${alike[p]} ${from} ${late}`
      const old = known.get(key)
      if (old !== undefined) return old
      const own = fewestVisits(work.pieces[p] as DrillPiece, stages, from, late)
      known.set(key, own)
      return own
    }
    return (lateness) => {
      const visits: (readonly Visit[])[] = []
      for (const [p, piece] of work.pieces.entries()) {
        const from = piece.waitsFor.reduce((late, { piece: other, operation }) => {
          const done = visits[other]?.find(({ operations }) => operations.includes(operation))
          return Math.max(late, done?.stage ?? stages.length)
        }, 0)
        const own = visitsOf(p, from, lateness === 'late' || (lateness === 'mixed' && p % 2 === 1))
        if (!own) return null
        visits.push(own)
      }
      return cellsOf(work, stages, visits)
    }
  }
}

const cellsOf = (work: DrillWork, stages: Stages, visits: readonly (readonly Visit[])[]): readonly DrillCell[] => {
  const carried = carries(work, visits, stages.length)
  const cells: DrillCell[] = []
  const drills: number[] = []
  let fits: DrillCell['fits'] = []
  for (const [s, tools] of stages.entries()) {
    fits = [...fits, ...fitsFor(drills, tools)]
    const more = stageCells(work, visits, s, carried, drills, fits)
    if (more.length > 0) fits = []
    cells.push(...more)
  }
  return cells
}

interface Way {
  readonly visits: number
  readonly stage: number
  readonly done: number
  readonly from: Way | null
}

/** Fewest stages in which a piece's operations can all be done, from a stage on; the earliest or the latest such. */
const fewestVisits = (piece: DrillPiece, stages: Stages, from: number, late: boolean): readonly Visit[] | null => {
  const all = allDone(piece)
  const ways = new Map<number, Way>([[0, { visits: 0, stage: -1, done: 0, from: null }]])
  for (let stage = from; stage < stages.length; stage++) {
    const tools = stages[stage] as readonly number[]
    for (const way of [...ways.values()]) {
      const after = doable(piece, way.done, tools)
      if (after === way.done) continue
      const known = ways.get(after)
      if (known && known.visits <= way.visits + (late ? 0 : 1)) continue
      ways.set(after, { visits: way.visits + 1, stage, done: after, from: way })
    }
  }
  const visits: Visit[] = []
  for (let way = ways.get(all); way?.from; way = way.from) {
    const now = way.done & ~way.from.done
    const operations = piece.operations.flatMap((_, i) => ((now >> i) & 1 ? [i] : []))
    visits.push({ stage: way.stage, operations: sorted(piece, operations) })
  }
  return ways.has(all) ? visits.reverse() : null
}

/** In an order that keeps what comes before what. */
export const sorted = (piece: DrillPiece, operations: readonly number[]): readonly number[] => {
  const order: number[] = []
  for (const wait of [...operations]) {
    const place = (i: number): void => {
      if (order.includes(i) || !operations.includes(i)) return
      for (const before of piece.operations[i]?.after ?? []) place(before)
      order.push(i)
    }
    place(wait)
  }
  return order
}

/** A piece kind that stays clamped from a stage to the next, or null, for each boundary: as many as can be. */
const carries = (
  work: DrillWork,
  visits: readonly (readonly Visit[])[],
  stages: number
): readonly (number | null)[] => {
  const isIn = visits.map((own) => {
    const set = new Set(own.map(({ stage }) => stage))
    return (stage: number) => set.has(stage)
  })
  const waited = new Set(work.pieces.flatMap(({ waitsFor }) => waitsFor.map(({ piece }) => piece)))
  const pieces = work.pieces.map((_, p) => p).filter((p) => work.pieces[p]?.waitsFor.length === 0 && !waited.has(p))
  const alone = (stage: number) =>
    work.pieces.reduce((sum, piece, p) => sum + (isIn[p]?.(stage) ? piece.count : 0), 0) === 1
  let best = new Map<number | null, readonly (number | null)[]>([[null, []]])
  for (let stage = 0; stage + 1 < stages; stage++) {
    const next = new Map<number | null, readonly (number | null)[]>()
    const keep = (at: number | null, way: readonly (number | null)[]) => {
      const known = next.get(at)
      if (!known || count(way) > count(known)) next.set(at, way)
    }
    for (const [last, way] of best) {
      keep(null, [...way, null])
      for (const p of pieces) {
        if (!isIn[p]?.(stage) || !isIn[p]?.(stage + 1)) continue
        if (last === p && (work.pieces[p]?.count ?? 0) < 2 && !alone(stage)) continue
        keep(p, [...way, p])
      }
    }
    best = next
  }
  return [...best.values()].reduce((most, way) => (count(way) > count(most) ? way : most), [])
}

const count = (way: readonly (number | null)[]): number => way.reduce<number>((sum, p) => sum + (p === null ? 0 : 1), 0)

/** Fits the stage's tools into the drills; a tool that is fitted stays in its drill. */
export const fitsFor = (drills: number[], tools: readonly number[]): DrillCell['fits'] => {
  const missing = tools.filter((tool) => !drills.includes(tool))
  return missing.map((tool) => {
    const leaving = drills.findIndex((other) => !tools.includes(other))
    const free = drills.length < tools.length && leaving < 0
    const drill = free ? drills.length : Math.max(0, leaving)
    drills[drill] = tool
    return { drill, tool, free }
  })
}

const stageCells = (
  work: DrillWork,
  visits: readonly (readonly Visit[])[],
  stage: number,
  carried: readonly (number | null)[],
  drills: readonly number[],
  fits: DrillCell['fits']
): readonly DrillCell[] => {
  const carriedIn = stage > 0 ? (carried[stage - 1] ?? null) : null
  const carriedOut = carried[stage] ?? null
  const all = work.pieces.flatMap((piece, p) => {
    const visit = visits[p]?.find((own) => own.stage === stage)
    return visit ? Array.from({ length: piece.count }, (_, serial) => ({ p, serial, visit })) : []
  })
  /** Which of the alike pieces stays: the last on even boundaries, the first on odd ones, so neighbours differ. */
  const serialAt = (boundary: number, p: number) => (boundary % 2 === 0 ? (work.pieces[p]?.count ?? 1) - 1 : 0)
  const isFirst = (one: (typeof all)[number]) => one.p === carriedIn && one.serial === serialAt(stage - 1, one.p)
  const isLast = (one: (typeof all)[number]) => one.p === carriedOut && one.serial === serialAt(stage, one.p)
  const rank = (one: (typeof all)[number]) => (isFirst(one) ? -1 : isLast(one) ? 1 : 0)
  return all
    .sort((a, b) => rank(a) - rank(b))
    .map((one, i) => ({
      piece: one.p,
      serial: one.serial,
      operations: one.visit.operations,
      drills: one.visit.operations.map((o) => drills.indexOf(work.pieces[one.p]?.operations[o]?.tool ?? 0)),
      mounts: !isFirst(one),
      fits: i === 0 ? fits : []
    }))
}
