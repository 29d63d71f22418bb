/** From a solved instance back to bars at the bench: which piece is cut where, what is left, in the order to cut. */
import type { BarJob } from './bar-job'
import type { CutBar } from './cut-plan'
import { cuttingOrder } from './cutting-order'
import { worthLeft } from './instance'
import { cutsIn, leftoverAfter, mmFromNm } from './kerf'
import { barKey, type CutPiece, type StockSource } from './profile-job'
import type { BarSolution } from './solution'

/** `letterFrom`: how many bars of other profiles are lettered already. */
export const layBars = (job: BarJob, solution: BarSolution, letterFrom: number): CutBar[] => {
  const dealt = job.cut.map((pieces) => [...pieces])
  const laid: { source: StockSource; pieces: CutPiece[] }[] = []
  const used = new Set<number>()
  for (const pattern of solution.patterns) {
    const source = job.sources[pattern.stock]
    if (!source) continue
    for (let bar = 0; bar < pattern.times; bar++) {
      const pieces = pattern.pieces.flatMap(({ demand, qty }) => (dealt[demand] ?? []).splice(0, qty).flat())
      used.add(pattern.stock)
      laid.push({ source, pieces })
    }
  }
  job.sources.forEach((source, order) => {
    if (source.kind === 'open' && !used.has(order)) laid.push({ source, pieces: [] })
  })
  const taken = new Set(laid.flatMap(({ source }) => source.key ?? []))
  const serials = new Map<string, number>()
  const nextKey = (stockId: string): string => {
    let serial = (serials.get(stockId) ?? 0) + 1
    while (taken.has(barKey(stockId, serial))) serial++
    serials.set(stockId, serial)
    return barKey(stockId, serial)
  }
  const marks = new Set(laid.flatMap(({ source }) => source.mark ?? []))
  let letter = letterFrom
  const nextMark = (): string => {
    while (marks.has(barMark(letter))) letter++
    return barMark(letter++)
  }
  return cuttingOrder(laid, ({ pieces }) => pieces.map(({ length }) => length)).map(
    ({ bar: { source, pieces }, order }) => {
      const waiting = [...pieces]
      const ordered = order.flatMap((length) => {
        const at = waiting.findIndex((piece) => piece.length === length)
        return at < 0 ? [] : waiting.splice(at, 1)
      })
      const key = source.key ?? nextKey(source.stockId)
      return oneBar(job, source, [...source.first, ...ordered], key, source.mark ?? nextMark())
    }
  )
}

const oneBar = (job: BarJob, source: StockSource, pieces: readonly CutPiece[], key: string, mark: string): CutBar => {
  const { kerf } = job.instance
  const trim = Math.round(source.trimMm * 1e6)
  const usable = Math.floor(source.lengthMm * 1e6 + 1e-3) - trim
  let start = trim
  const placed = pieces.map((piece) => {
    const { pieceId, mark: pieceMark, state } = piece
    const at = { pieceId, mark: pieceMark, lengthMm: mmFromNm(piece.length), startMm: mmFromNm(start), state }
    start += piece.length + kerf
    return at
  })
  const grown = start - trim
  const left = leftoverAfter(usable, grown)
  const worth = worthLeft(source.keep, left)
  return {
    mark,
    key,
    stockId: source.stockId,
    isOffcut: source.kind === 'offcut' || source.isOffcut,
    lengthMm: source.lengthMm,
    trimMm: source.trimMm,
    pieces: placed,
    cuts: cutsIn(usable, grown, kerf, pieces.length) + (trim > 0 ? 1 : 0),
    leftoverMm: mmFromNm(left),
    keep: left > 0 && left >= source.keepFrom,
    costMinor: source.costMinor,
    keptWorthMinor: job.priced ? worth : 0
  }
}

/** A, B, … Z, AA, AB, … */
export const barMark = (index: number): string =>
  (index >= 26 ? barMark(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26))
