/** The rack of offcuts, from one job to the next. */
import type { CutPlan } from './cut-plan'
import type { Offcut } from './stock'

export interface BuiltJob {
  readonly rack: readonly Offcut[]
  readonly cuts: readonly CutPlan[]
  /** What was built, as it is written on the offcut: a title or id. */
  readonly from: string
  /** ISO date. */
  readonly on: string
}

export interface BuiltRack {
  /** Kept for undo: put it back in place of `rack`. */
  readonly before: readonly Offcut[]
  readonly rack: readonly Offcut[]
  readonly used: readonly Offcut[]
  readonly added: readonly Offcut[]
  /** New bars taken, by stock, for counted stock. */
  readonly bars: readonly { readonly stockId: string; readonly count: number }[]
}

/**
 * The rack after a job is built: offcuts that were cut come off, leftovers worth keeping go on, each with where and when it
 * came from. What is left of a piece of a lot stays of that lot.
 */
export const markAsBuilt = ({ rack, cuts, from, on }: BuiltJob): BuiltRack => {
  const cutBars = cuts.flatMap((cut) => cut.bars.map((bar) => ({ ...bar, profileId: cut.profileId })))
  const usedIds = new Set(cutBars.filter((bar) => bar.isOffcut).map((bar) => bar.stockId))
  const used = rack.filter((offcut) => usedIds.has(offcut.id))
  const left = rack.filter((offcut) => !usedIds.has(offcut.id))
  const taken = new Set(rack.map((offcut) => offcut.id))
  const added: Offcut[] = []
  for (const bar of cutBars) {
    if (!bar.keep) continue
    const id = freshId(`${on}-${bar.mark}`, taken)
    taken.add(id)
    added.push({
      id,
      profileId: bar.profileId,
      lengthMm: bar.leftoverMm,
      worthMinor: bar.keptWorthMinor,
      cameFrom: from,
      cameOn: on,
      lot: used.find((offcut) => offcut.id === bar.stockId)?.lot ?? `${bar.stockId} ${on}`
    })
  }
  const counts = new Map<string, number>()
  for (const bar of cutBars) if (!bar.isOffcut) counts.set(bar.stockId, (counts.get(bar.stockId) ?? 0) + 1)
  return {
    before: rack,
    rack: [...left, ...added],
    used,
    added,
    bars: [...counts].map(([stockId, count]) => ({ stockId, count }))
  }
}

/** What is written on an offcut's label. */
export interface OffcutLabel {
  readonly offcutId: string
  readonly profileId: string
  readonly lengthMm: number
  readonly cameFrom: string
  readonly cameOn: string
}

export const offcutLabels = (offcuts: readonly Offcut[]): OffcutLabel[] =>
  offcuts.map(({ id, profileId, lengthMm, cameFrom, cameOn }) => ({
    offcutId: id,
    profileId,
    lengthMm,
    cameFrom,
    cameOn
  }))

const freshId = (wanted: string, taken: ReadonlySet<string>): string => {
  let id = wanted
  for (let n = 2; taken.has(id); n++) id = `${wanted}-${n}`
  return id
}
