/** New bars, offcuts and bars already cut as stock of a whole-number instance. */
import { mm } from '../units'
import type { DoneBar } from './cut-plan'
import type { InstanceStock, KeepRule } from './instance'
import { haveNm, needNm } from './kerf'
import { barKey, type ProfileJob, type StockSource } from './profile-job'
import type { CuttingSetup, Offcut } from './stock'

export interface Offered {
  readonly stock: InstanceStock
  readonly source: StockSource
}

/** A new bar's lot is its row of the stock list; an offcut is a lot of its own unless it says which lot it is from. */
export const newStock = (job: ProfileJob, priced: boolean): Offered[] =>
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

export const rackStock = (job: ProfileJob, priced: boolean): Offered[] => {
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

/** A bar that was cut from stock that is no longer listed. */
export const doneStock = (done: DoneBar, setup: CuttingSetup): Offered => {
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
