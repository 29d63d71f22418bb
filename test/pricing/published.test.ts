import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { sealantRun } from '../../shared-model/bill'
import {
  billedParcelWeight,
  breakEven,
  grossFromYield,
  jobUnitCost,
  learningAverage,
  learningUnit,
  lengthPlusGirth,
  markupAndMargin,
  netFromGross,
  overheadRate,
  type ParcelRules,
  priceAfterFees,
  priceFromMarkup,
  type Sides,
  salesTax,
  targetCost,
  toolWear
} from '../../shared-model/pricing'
import {
  MM_PER_FOOT,
  MM_PER_INCH,
  MM3_PER_CUBIC_INCH,
  minorUnits,
  mm3,
  ratio,
  ratioFromDecimal,
  ratioToNumber
} from '../../shared-model/units'

type Figures = Record<string, number | string>
type InputName =
  | 'actualLb'
  | 'beadDepthIn'
  | 'beadWidthIn'
  | 'cartridgeIn3'
  | 'cost'
  | 'divisor'
  | 'feeShare'
  | 'first'
  | 'fixedCost'
  | 'fixedFee'
  | 'gross'
  | 'hours'
  | 'jobHours'
  | 'labour'
  | 'labourHours'
  | 'lifeUnits'
  | 'marginOnPrice'
  | 'markupOnCost'
  | 'material'
  | 'net'
  | 'overhead'
  | 'overheadRatePerHour'
  | 'price'
  | 'rate'
  | 'salvage'
  | 'targetProfit'
  | 'thresholdIn3'
  | 'unit'
  | 'units'
  | 'used'
  | 'variableCost'
  | 'yieldShare'
type Inputs = Readonly<Record<InputName, number>> & {
  readonly sidesIn: Sides
  readonly sideRounding: ParcelRules['sideRounding']
}
interface Row {
  readonly id: string
  readonly quantity: string
  readonly inputs: Inputs
  readonly expected: Figures
  readonly tolerance: Record<string, number>
  readonly source: string
}
const rows: readonly Row[] = JSON.parse(readFileSync(new URL('../reference/pricing.json', import.meta.url), 'utf8'))

type Answer =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: { readonly code: string } }

/** A function's answer as figures, or the code of its problem. */
const figures = <A extends Answer>(answer: A, take: (value: Extract<A, { ok: true }>['value']) => Figures): Figures =>
  answer.ok ? take(answer.value as Extract<A, { ok: true }>['value']) : { problem: answer.problem.code }

const exact = ratioFromDecimal
const cents = (amount: number) => minorUnits(exact(amount), 2)
const every = { everyMinor: 1, endsWithMinor: 0 }
const n = ratioToNumber

const work: Record<string, (i: Row['inputs']) => Figures> = {
  'overhead-rate': (i) =>
    figures(
      overheadRate({ overhead: exact(i.overhead), labourHours: exact(i.labourHours), jobHours: exact(i.jobHours) }),
      (v) => ({
        ratePerHour: n(v.ratePerHour),
        applied: n(v.applied)
      })
    ),
  'job-unit-cost': (i) =>
    figures(
      jobUnitCost({
        material: exact(i.material),
        labour: exact(i.labour),
        overheadRatePerHour: exact(i.overheadRatePerHour),
        hours: exact(i.hours),
        units: exact(i.units)
      }),
      (v) => ({ unitCost: n(v) })
    ),
  'markup-and-margin': (i) =>
    figures(markupAndMargin(exact(i.cost), exact(i.price)), (v) => ({
      markupOnCost: n(v.markupOnCost),
      marginOnPrice: n(v.marginOnPrice)
    })),
  'price-from-markup': (i) => figures(priceFromMarkup(exact(i.cost), exact(i.markupOnCost)), (v) => ({ price: n(v) })),
  'target-cost': (i) => figures(targetCost(exact(i.price), exact(i.marginOnPrice)), (v) => ({ cost: n(v) })),
  'break-even': (i) =>
    figures(
      breakEven({
        price: exact(i.price),
        variableCost: exact(i.variableCost),
        fixedCost: exact(i.fixedCost),
        targetProfit: exact(i.targetProfit)
      }),
      (v) => ({ ...v })
    ),
  'price-after-fees': (i) =>
    figures(
      priceAfterFees(
        {
          cost: ratio(cents(i.cost)),
          fixedFee: ratio(cents(i.fixedFee)),
          feeShare: exact(i.feeShare),
          marginOnPrice: exact(i.marginOnPrice),
          feeTaxShare: ratio(0),
          postageCharged: ratio(0),
          feeOnPostage: false,
          taxInsideShare: ratio(0)
        },
        every
      ),
      (v) => ({ price: v.priceMinor / 100 })
    ),
  'sales-tax': (i) => figures(salesTax(cents(i.net), exact(i.rate)), (v) => ({ tax: v / 100 })),
  'net-from-gross': (i) => figures(netFromGross(cents(i.gross), exact(i.rate)), (v) => ({ net: v / 100 })),
  'learning-average': (i) => figures(learningAverage(i.first, i.rate, i.units), (v) => ({ ...v })),
  'learning-unit': (i) => figures(learningUnit(i.first, i.rate, i.unit), (v) => ({ hours: v.last, total: v.total })),
  'gross-from-yield': (i) => figures(grossFromYield(exact(i.net), exact(i.yieldShare)), (v) => ({ gross: n(v) })),
  'length-plus-girth': (i) => figures(lengthPlusGirth(i.sidesIn), (v) => ({ inches: v })),
  'billed-parcel-weight': (i) =>
    figures(
      billedParcelWeight(i.sidesIn, i.actualLb, {
        threshold: i.thresholdIn3,
        divisor: i.divisor,
        sideStep: 1,
        sideRounding: i.sideRounding,
        weightStep: 1
      }),
      (v) => ({ billedLb: v })
    ),
  'tool-wear': (i) =>
    figures(
      toolWear({ cost: exact(i.cost), salvage: exact(i.salvage), lifeUnits: exact(i.lifeUnits), used: exact(i.used) }),
      (v) => ({ perUnit: n(v.perUnit), charge: n(v.charge) })
    ),
  'sealant-run': (i) =>
    figures(
      sealantRun(
        { widthMm: i.beadWidthIn * MM_PER_INCH, depthMm: i.beadDepthIn * MM_PER_INCH },
        mm3(i.cartridgeIn3 * MM3_PER_CUBIC_INCH)
      ),
      (v) => ({ runFt: v / MM_PER_FOOT })
    )
}

describe('published worked values', () => {
  it.each(rows.map((row) => [row.id, row.source, row] as const))('%s: %s', (_id, _source, row) => {
    const got = work[row.quantity]?.(row.inputs) ?? {}
    for (const [field, wanted] of Object.entries(row.expected)) {
      if (typeof wanted === 'string') expect(got[field]).toBe(wanted)
      else expect(Math.abs(Number(got[field]) - wanted), field).toBeLessThanOrEqual(row.tolerance[field] ?? 0)
    }
  })

  it('answers every quantity of the list', () => {
    expect(rows.length).toBeGreaterThan(30)
    expect([...new Set(rows.map((row) => row.quantity))].sort()).toEqual(Object.keys(work).sort())
  })
})
