import {
  type AtBench,
  type BarOf,
  barTakenBack,
  cutAwayMm,
  cutUpTo,
  drilled,
  foundLong,
  NOTHING_AT_BENCH,
  pinned,
  spoiled
} from '../../cutting'
import { failed, ok } from '../../outcome'
import type { Design } from '../design'
import { nextRevision } from '../revision'
import type { Edited } from './edit'

/** Cut this piece from this bar whatever the rest is; null: from whichever bar is best. */
export const pinPiece = (design: Design, pieceId: string, barKey: string | null): Edited<Design> =>
  ok(settled(design, (bench) => pinned(bench, pieceId, barKey)))

/** The piece is cut, and those before it on its bar. */
export const cutPiece = (design: Design, bar: BarOf, pieceId: string): Edited<Design> =>
  ok(settled(design, (bench) => cutUpTo(bench, bar, pieceId)))

/** The piece is cut and drilled. */
export const drillPiece = (design: Design, bar: BarOf, pieceId: string): Edited<Design> =>
  ok(settled(design, (bench) => drilled(bench, bar, pieceId)))

/** The piece has to be cut again; the sheet that is in use is out of date, so the revision goes up. */
export const spoilPiece = (design: Design, bar: BarOf, pieceId: string, goodMm: number): Edited<Design> => {
  const piece = bar.pieces.find((each) => each.pieceId === pieceId)
  const wrong = outside('goodMm', goodMm, 0, piece?.lengthMm ?? 0)
  return wrong ?? ok(revised(settled(design, (bench) => spoiled(bench, bar, pieceId, goodMm))))
}

/** The bar is shorter than planned, mm; the revision goes up. */
export const shortenBar = (design: Design, bar: BarOf, kerfMm: number, lengthMm: number): Edited<Design> => {
  const wrong = outside('lengthMm', lengthMm, cutAwayMm(bar, kerfMm), bar.lengthMm)
  return wrong ?? ok(revised(settled(design, (bench) => foundLong(bench, bar, lengthMm))))
}

/** Nothing of this bar is cut or measured after all. */
export const takeBackBar = (design: Design, barKey: string): Edited<Design> =>
  ok(settled(design, (bench) => barTakenBack(bench, barKey)))

/** A build that is finished, or begun again: nothing is cut, nothing pinned. */
export const clearBench = (design: Design): Edited<Design> => ok(settled(design, () => NOTHING_AT_BENCH))

const settled = (design: Design, change: (bench: AtBench) => AtBench): Design => {
  const { atBench = NOTHING_AT_BENCH, ...rest } = design
  const after = change(atBench)
  if (after.pins.length + after.bars.length > 0) return { ...rest, atBench: after }
  return design.atBench === undefined ? design : rest
}

const revised = (design: Design): Design => ({ ...design, revision: nextRevision(design.revision) })

const outside = (field: string, value: number, least: number, most: number) => {
  if (Number.isFinite(value) && value >= least && value <= most) return null
  return Number.isFinite(value)
    ? failed({ code: 'field-out-of-range' as const, figures: { field, value, least, most } })
    : failed({ code: 'field-not-finite' as const, figures: { field, least, most } })
}
