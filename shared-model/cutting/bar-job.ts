/**
 * One profile's pieces, stock and rack as a whole-number instance in nanometres, with the way back to bars and pieces.
 * Groups from one bar become one long piece; a bar that is pinned to or cut already becomes a stock of its own, of which
 * there is one and whose cost is spent.
 */
import type { FindingOf } from '../outcome'
import { mm } from '../units'
import type { CuttingFindingCodes } from './codes'
import type { DoneBar, Piece } from './cut-plan'
import type { CutInstance, InstanceStock, KeepRule } from './instance'
import { worthLeft } from './instance'
import { joinParts } from './joins'
import { haveNm, mmFromNm, needNm } from './kerf'
import type { CuttingSetup, Offcut, StockBar } from './stock'

export interface ProfileJob {
  readonly profileId: string
  readonly pieces: readonly Piece[]
  readonly stock: readonly StockBar[]
  readonly rack: readonly Offcut[]
  readonly setup: CuttingSetup
  readonly done: readonly DoneBar[]
}

/** Where a stock of the instance comes from. */
export interface StockSource {
  readonly kind: 'new' | 'offcut' | 'open'
  readonly stockId: string
  readonly lengthMm: number
  readonly trimMm: number
  /** null: no price known. */
  readonly costMinor: number | null
  readonly keep: KeepRule | null
  readonly isOffcut: boolean
  /** Shortest leftover worth keeping, in nanometres. */
  readonly keepFrom: number
  /** Open bars only: what is cut from it or pinned to it, in order, and its key. */
  readonly key: string | null
  readonly mark: string | null
  readonly first: readonly CutPiece[]
}

/** A piece at the length that is sawn, its allowance in it. */
export interface CutPiece {
  readonly pieceId: string
  readonly mark: string
  readonly length: number
}

export interface BarJob {
  readonly profileId: string
  readonly instance: CutInstance
  readonly sources: readonly StockSource[]
  /** The pieces of each demand of the instance, a list for each one. */
  readonly cut: readonly (readonly (readonly CutPiece[])[])[]
  readonly uncut: readonly { readonly pieceId: string; readonly lengthMm: number; readonly longestMm: number }[]
  /** Spent or saved whatever the rest of the plan is: pinned and cut bars. */
  readonly fixedValue: number
  readonly priced: boolean
  readonly findings: readonly FindingOf<CuttingFindingCodes>[]
}

export const barKey = (stockId: string, serial: number): string => `${stockId}#${serial}`

export const barJob = (job: ProfileJob): BarJob => {
  const findings: FindingOf<CuttingFindingCodes>[] = []
  const kerf = needNm(mm(job.setup.kerfMm))
  const unpriced = job.stock.filter((bar) => bar.offer.priceMinor === null).length
  const priced = unpriced === 0
  if (!priced) {
    const figures = { profileId: job.profileId, unpriced }
    findings.push({ code: 'bars-compared-by-length', severity: 'note', figures, where: { field: 'stock' } })
  }
  const offered = [...newStock(job, priced), ...rackStock(job, priced)]
  const longest = offered.reduce((most, { stock }) => Math.max(most, stock.length - stock.trim), 0)
  const opened = openBars(job, offered, kerf, findings)
  const demands = demandsOf(job, opened.pinned, kerf, longest, findings)
  const stock = [...opened.rest, ...opened.open]
  return {
    profileId: job.profileId,
    instance: { kerf, stock: stock.map((bar) => bar.stock), demand: demands.demand },
    sources: stock.map((bar) => bar.source),
    cut: demands.cut,
    uncut: demands.uncut,
    fixedValue: opened.fixedValue,
    priced,
    findings
  }
}

interface Offered {
  readonly stock: InstanceStock
  readonly source: StockSource
}

/** A new bar's lot is its row of the stock list; an offcut is a lot of its own unless it says which lot it is from. */
const newStock = (job: ProfileJob, priced: boolean): Offered[] =>
  job.stock.map((bar, lot) => {
    const length = haveNm(mm(bar.lengthMm))
    const cost = priced ? (bar.offer.priceMinor ?? 0) : Math.ceil(bar.lengthMm)
    const keep = {
      from: needNm(mm(job.setup.keepFromMm)),
      worth: Math.round(cost * job.setup.keptWorthPercent),
      per: length * 100
    }
    const trim = needNm(mm(job.setup.endTrimMm))
    return {
      stock: { length, cost, count: bar.count, trim, keep: keepRule(keep), lot },
      source: {
        kind: 'new',
        stockId: bar.id,
        lengthMm: bar.lengthMm,
        trimMm: job.setup.endTrimMm,
        costMinor: bar.offer.priceMinor,
        keep: keepRule(keep),
        isOffcut: false,
        keepFrom: keep.from,
        key: null,
        mark: null,
        first: []
      }
    }
  })

const rackStock = (job: ProfileJob, priced: boolean): Offered[] => {
  const lots = [...new Set(job.rack.map(lotName))]
  return job.rack.map((offcut) => {
    const length = haveNm(mm(offcut.lengthMm))
    const cost = priced ? offcut.worthMinor : Math.ceil((offcut.lengthMm * job.setup.keptWorthPercent) / 100)
    const keep = { from: needNm(mm(job.setup.keepFromMm)), worth: cost, per: length }
    return {
      stock: {
        length,
        cost,
        count: 1,
        trim: 0,
        keep: keepRule(keep),
        lot: job.stock.length + lots.indexOf(lotName(offcut))
      },
      source: {
        kind: 'offcut',
        stockId: offcut.id,
        lengthMm: offcut.lengthMm,
        trimMm: 0,
        costMinor: offcut.worthMinor,
        keep: keepRule(keep),
        isOffcut: true,
        keepFrom: keep.from,
        key: barKey(offcut.id, 1),
        mark: null,
        first: []
      }
    }
  })
}

const lotName = (offcut: Offcut): string => (offcut.lot === undefined ? `offcut ${offcut.id}` : `lot ${offcut.lot}`)

const keepRule = (keep: KeepRule): KeepRule | null => (keep.worth > 0 && keep.per > 0 ? keep : null)

interface Opened {
  readonly rest: Offered[]
  readonly open: Offered[]
  readonly pinned: ReadonlySet<string>
  readonly fixedValue: number
}

/** Bars that are cut already or pinned to: what is left of each is a stock of its own. */
const openBars = (
  job: ProfileJob,
  offered: readonly Offered[],
  kerf: number,
  findings: FindingOf<CuttingFindingCodes>[]
): Opened => {
  const rest = offered.map((bar) => ({ ...bar }))
  const open: Offered[] = []
  const pinned = new Set<string>()
  let fixedValue = 0
  const bars = new Map<
    string,
    { from: Offered; usable: number; length: number; first: CutPiece[]; closed: boolean; mark: string | null }
  >()
  const take = (stockId: string): Offered | null => {
    const index = rest.findIndex(({ source }) => source.stockId === stockId)
    const found = rest[index]
    if (!found || found.stock.count === 0) return null
    if (found.stock.count !== null) rest[index] = { ...found, stock: { ...found.stock, count: found.stock.count - 1 } }
    return found
  }
  for (const done of job.done) {
    const from = take(done.stockId) ?? doneStock(done, job.setup)
    const length = Math.min(haveNm(mm(done.lengthMm)), haveNm(mm(from.source.lengthMm)))
    const first = done.pieces.map((piece) => ({
      pieceId: piece.pieceId,
      mark: piece.mark,
      length: needNm(mm(piece.lengthMm))
    }))
    const usable = length - needNm(mm(done.trimMm))
    bars.set(done.key, { from, usable, length, first, closed: done.closed, mark: done.mark })
    for (const piece of done.pieces) pinned.add(piece.pieceId)
  }
  for (const piece of job.pieces) {
    if (piece.pinnedTo === null || pinned.has(piece.id)) continue
    const refused = (why: 'no-such-bar' | 'no-room'): void => {
      const figures = { mark: piece.mark, bar: piece.pinnedTo ?? '', why }
      findings.push({ code: 'pin-refused', severity: 'warn', figures, where: { channelId: piece.channelId } })
    }
    let bar = bars.get(piece.pinnedTo)
    if (!bar) {
      const from = take(piece.pinnedTo.slice(0, piece.pinnedTo.lastIndexOf('#')))
      if (from === null) {
        refused('no-such-bar')
        continue
      }
      const usable = from.stock.length - from.stock.trim
      bar = { from, usable, length: from.stock.length, first: [], closed: false, mark: null }
      bars.set(piece.pinnedTo, bar)
    }
    const length = sawnLength(piece)
    const filled = bar.first.reduce((sum, cut) => sum + cut.length + kerf, 0)
    if (bar.closed || filled + length > bar.usable) refused('no-room')
    else {
      bar.first.push({ pieceId: piece.id, mark: piece.mark, length })
      pinned.add(piece.id)
    }
  }
  for (const [key, bar] of bars) {
    const filled = bar.first.reduce((sum, cut) => sum + cut.length + kerf, 0)
    const left = Math.max(0, bar.usable - filled)
    const keep = bar.from.stock.keep
    fixedValue += bar.from.stock.cost - worthLeft(keep, left)
    open.push({
      stock: {
        length: bar.closed ? 0 : left,
        cost: worthLeft(keep, left),
        count: 1,
        trim: 0,
        keep,
        lot: bar.from.stock.lot
      },
      source: {
        ...bar.from.source,
        kind: 'open',
        lengthMm: mmFromNm(bar.length),
        key,
        mark: bar.mark,
        first: bar.first
      }
    })
  }
  return { rest, open, pinned, fixedValue }
}

/** A bar that was cut from stock that is no longer listed. */
const doneStock = (done: DoneBar, setup: CuttingSetup): Offered => {
  const length = haveNm(mm(done.lengthMm))
  const cost = done.costMinor ?? Math.ceil(done.lengthMm)
  const keep = keepRule({
    from: needNm(mm(setup.keepFromMm)),
    worth: Math.round(cost * setup.keptWorthPercent),
    per: length * 100
  })
  return {
    stock: { length, cost, count: 1, trim: needNm(mm(done.trimMm)), keep, lot: -1 },
    source: {
      kind: done.isOffcut ? 'offcut' : 'new',
      stockId: done.stockId,
      lengthMm: done.lengthMm,
      trimMm: done.trimMm,
      costMinor: done.costMinor,
      keep,
      isOffcut: done.isOffcut,
      keepFrom: needNm(mm(setup.keepFromMm)),
      key: done.key,
      mark: done.mark,
      first: []
    }
  }
}

export const sawnLength = (piece: Piece): number => needNm(mm(piece.lengthMm)) + needNm(mm(piece.allowanceMm ?? 0))

interface Demands {
  readonly demand: CutInstance['demand']
  readonly cut: BarJob['cut']
  readonly uncut: BarJob['uncut']
}

const demandsOf = (
  job: ProfileJob,
  pinned: ReadonlySet<string>,
  kerf: number,
  longest: number,
  findings: FindingOf<CuttingFindingCodes>[]
): Demands => {
  const free = job.pieces.filter((piece) => !pinned.has(piece.id))
  const uncut: { pieceId: string; lengthMm: number; longestMm: number }[] = []
  const runs: { pieces: CutPiece[]; lotGroup: string | null }[] = []
  const groups = new Map<string, { pieces: CutPiece[]; lotGroup: string | null; members: Piece[] }>()
  for (const piece of free) {
    const length = sawnLength(piece)
    const cut = { pieceId: piece.id, mark: piece.mark, length }
    const lotGroup = piece.lotGroup ?? null
    if (length > longest) {
      const joined = job.setup.joinsAllowed && longest > 0 ? joinParts(piece, length, longest) : null
      const figures = { mark: piece.mark, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) }
      const where = { channelId: piece.channelId }
      if (joined === null) {
        uncut.push({ pieceId: piece.id, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) })
        findings.push({
          code: 'piece-too-long',
          severity: 'stop',
          figures: { ...figures, profileId: job.profileId },
          where
        })
      } else {
        const partMm = mmFromNm(Math.max(...joined.map((part) => part.length)))
        findings.push({
          code: 'piece-joined',
          severity: 'warn',
          figures: { ...figures, parts: joined.length, partMm },
          where
        })
        for (const part of joined) runs.push({ pieces: [part], lotGroup })
      }
    } else if (piece.barGroup === undefined) runs.push({ pieces: [cut], lotGroup })
    else {
      const group = groups.get(piece.barGroup)
      if (group) {
        group.pieces.push(cut)
        group.members.push(piece)
      } else groups.set(piece.barGroup, { pieces: [cut], lotGroup, members: [piece] })
    }
  }
  for (const [name, group] of groups) {
    const length = runLength(group.pieces, kerf)
    if (length <= longest) runs.push(group)
    else {
      const figures = { group: name, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) }
      const channelId = group.members[0]?.channelId
      findings.push({ code: 'bar-group-too-long', severity: 'stop', figures, where: channelId ? { channelId } : {} })
      for (const cut of group.pieces) runs.push({ pieces: [cut], lotGroup: group.lotGroup })
    }
  }
  return { ...mergedRuns(runs, kerf), uncut }
}

const runLength = (pieces: readonly CutPiece[], kerf: number): number =>
  pieces.reduce((sum, cut) => sum + cut.length, 0) + (pieces.length - 1) * kerf

const mergedRuns = (
  runs: readonly { pieces: CutPiece[]; lotGroup: string | null }[],
  kerf: number
): Pick<Demands, 'demand' | 'cut'> => {
  const lots: string[] = []
  const merged = new Map<string, { length: number; lotGroup: number | null; cut: CutPiece[][] }>()
  for (const run of runs) {
    const length = runLength(run.pieces, kerf)
    if (run.lotGroup !== null && !lots.includes(run.lotGroup)) lots.push(run.lotGroup)
    const lotGroup = run.lotGroup === null ? null : lots.indexOf(run.lotGroup)
    const key = `${length} ${lotGroup}`
    const found = merged.get(key)
    if (found) found.cut.push(run.pieces)
    else merged.set(key, { length, lotGroup, cut: [run.pieces] })
  }
  const rows = [...merged.values()].sort((a, b) => b.length - a.length)
  return {
    demand: rows.map(({ length, lotGroup, cut }) => ({ length, qty: cut.length, lotGroup })),
    cut: rows.map(({ cut }) => cut)
  }
}
