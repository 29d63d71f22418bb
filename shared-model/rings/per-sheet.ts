import type { Budget } from '../outcome'
import { packCircles } from './pack-circles'
import type { RingNeed, RingPlan } from './ring-plan'
import type { RingsInput } from './rings-input'
import type { SheetStock } from './sheet'

/** As many circles of each need as one sheet of each kind could hold, with a proven upper bound beside it. */
export const perSheet = ({ needs, sheets, setup, budget }: RingsInput): RingPlan['perSheet'] => {
  const pairs = needs.flatMap((need) => sheets.filter((sheet) => isFor(sheet, need)).map((sheet) => ({ need, sheet })))
  const share: Budget = { ...budget, work: budget.work / (SHARE * Math.max(1, pairs.length)) }
  return pairs.flatMap(({ need, sheet }) => {
    const { widthMm, heightMm } = sheet
    const { webMm, edgeMm } = setup
    const packed = packCircles({ widthMm, heightMm, cutDiameterMm: need.cutDiameterMm, webMm, edgeMm }, share)
    if (!packed.ok) return []
    const { count, upperBound } = packed.value
    return [{ needId: need.id, sheetId: sheet.id, count, upperBound }]
  })
}

/** The part of the work that these searches take together. */
const SHARE = 4

/** Thicknesses that differ by less are one. */
const SAME_THICKNESS_MM = 0.01

const isFor = (sheet: SheetStock, need: RingNeed): boolean =>
  sheet.material === need.material && Math.abs(sheet.thicknessMm - need.thicknessMm) < SAME_THICKNESS_MM
