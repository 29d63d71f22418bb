import type { FindingOf } from '../outcome'
import { mm } from '../units'
import type { CuttingFindingCodes } from './codes'
import type { DonePiece } from './cut-plan'
import { worthLeft } from './instance'
import { haveNm, mmFromNm, needNm } from './kerf'
import { doneStock, type Offered } from './offered-stock'
import { type CutPiece, type ProfileJob, sawnLength } from './profile-job'

export interface Opened {
  readonly rest: Offered[]
  readonly open: Offered[]
  readonly pinned: ReadonlySet<string>
  readonly fixedValue: number
}

/** Bars that are cut already or pinned to: what is left of each is a stock of its own. */
export const openBars = (
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
    {
      from: Offered
      usable: number
      length: number
      trimMm: number
      first: CutPiece[]
      closed: boolean
      mark: string | null
    }
  >()
  const take = (stockId: string): Offered | null => {
    const index = rest.findIndex(({ source }) => source.stockId === stockId)
    const found = rest[index]
    if (!found || found.stock.count === 0) return null
    if (found.stock.count !== null) rest[index] = { ...found, stock: { ...found.stock, count: found.stock.count - 1 } }
    return found
  }
  const giveBack = ({ source, stock }: Offered): void => {
    const index = rest.findIndex((each) => each.source.stockId === source.stockId)
    if (stock.count !== null && index >= 0) rest[index] = { source, stock }
  }
  for (const done of job.done) {
    const from = take(done.stockId) ?? doneStock(done, job.setup)
    const first: CutPiece[] = done.pieces.map((piece) => ({
      pieceId: piece.pieceId,
      mark: piece.mark,
      length: needNm(mm(piece.lengthMm)),
      state: piece.state
    }))
    // What was cut from it was there, whatever the rack says of it since.
    const cutNm = first.reduce<number>((sum, piece) => sum + piece.length, needNm(mm(done.trimMm)))
    const length = Math.max(cutNm, Math.min(haveNm(mm(done.lengthMm)), haveNm(mm(from.source.lengthMm))))
    const usable = length - needNm(mm(done.trimMm))
    bars.set(done.key, { from, usable, length, trimMm: done.trimMm, first, closed: done.closed, mark: done.mark })
    for (const piece of done.pieces) {
      if (piece.state === 'spoiled') continue
      pinned.add(piece.pieceId)
      findings.push(...cutOtherwise(job, piece))
    }
  }
  for (const piece of job.pieces) {
    if (piece.pinnedTo === null || pinned.has(piece.id)) continue
    const refused = (why: 'no-such-bar' | 'no-room'): void => {
      const figures = { mark: piece.mark, bar: piece.pinnedTo ?? '', why }
      findings.push({ code: 'pin-refused', severity: 'warn', figures, where: { channelId: piece.channelId } })
    }
    let bar = bars.get(piece.pinnedTo)
    const isNew = !bar
    if (!bar) {
      const from = take(piece.pinnedTo.slice(0, piece.pinnedTo.lastIndexOf('#')))
      if (from === null) {
        refused('no-such-bar')
        continue
      }
      const usable = from.stock.length - from.stock.trim
      bar = {
        from,
        usable,
        length: from.stock.length,
        trimMm: from.source.trimMm,
        first: [],
        closed: false,
        mark: null
      }
    }
    const length = sawnLength(piece)
    const filled = bar.first.reduce((sum, cut) => sum + cut.length + kerf, 0)
    if (bar.closed || filled + length > bar.usable) {
      refused('no-room')
      if (isNew) giveBack(bar.from)
    } else {
      bars.set(piece.pinnedTo, bar)
      bar.first.push({ pieceId: piece.id, mark: piece.mark, length, state: 'planned' })
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
        trimMm: bar.trimMm,
        key,
        mark: bar.mark,
        first: bar.first
      }
    })
  }
  return { rest, open, pinned, fixedValue }
}

/** A cut piece whose channel has since got another length. */
const cutOtherwise = (job: ProfileJob, { pieceId, mark, lengthMm }: DonePiece): FindingOf<CuttingFindingCodes>[] => {
  const wanted = job.pieces.find(({ id }) => id === pieceId)
  if (wanted === undefined) return []
  const wantedMm = wanted.lengthMm + (wanted.allowanceMm ?? 0)
  if (Math.abs(wantedMm - lengthMm) < SAME_LENGTH_MM) return []
  const where = { channelId: wanted.channelId, field: `channels.${wanted.channelId}.lengthMm` }
  return [{ code: 'cut-otherwise', severity: 'warn', figures: { mark, cutMm: lengthMm, wantedMm }, where }]
}

const SAME_LENGTH_MM = 0.001
