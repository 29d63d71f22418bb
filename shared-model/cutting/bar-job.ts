/**
 * One profile's pieces, stock and rack as a whole-number instance in nanometres, with the way back to bars and pieces.
 * Groups from one bar become one long piece; a bar that is pinned to or cut already becomes a stock of its own, of which
 * there is one and whose cost is spent.
 */
import type { FindingOf } from '../outcome'
import { mm } from '../units'
import type { CuttingFindingCodes } from './codes'
import { demandsOf } from './demands'
import type { CutInstance } from './instance'
import { needNm } from './kerf'
import { newStock, rackStock } from './offered-stock'
import { openBars } from './open-bars'
import type { CutPiece, ProfileJob, StockSource } from './profile-job'

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
