import {
  breakEven,
  grossFromYield,
  jobUnitCost,
  learningAverage,
  learningUnit,
  markupAndMargin,
  netFromGross,
  overheadRate,
  priceAfterFees,
  priceFromMarkup,
  salesTax,
  targetCost,
  toolWear
} from '../../../shared-model/pricing'
import { minorUnits, type Ratio, ratio, ratioFromDecimal, ratioToNumber } from '../../../shared-model/units'
import { type AnswerValue, answer, decimal, number, type Work } from './answer'
import type { Fields } from './check'

/** The published examples count money in hundredths. */
const DIGITS = 2
const fromMinor = (minor: number): number => minor / 10 ** DIGITS

const exact = (inputs: Fields, key: string, otherwise?: number): Ratio =>
  ratioFromDecimal(decimal(inputs, key, otherwise))
const minor = (inputs: Fields, key: string): number => minorUnits(exact(inputs, key), DIGITS)
const inMinor = (inputs: Fields, key: string, otherwise?: number): Ratio => {
  const amount = exact(inputs, key, otherwise)
  return ratio(amount.num * 10n ** BigInt(DIGITS), amount.den)
}

/** Exact figures as plain numbers. */
const plain = (values: Readonly<Record<string, Ratio>>): Readonly<Record<string, AnswerValue>> =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, ratioToNumber(value)]))

const ZERO = ratio(0)

/** Costs, prices, taxes, learning and wear. */
export const PRICE_QUANTITIES: Readonly<Record<string, Work>> = {
  'overhead-rate': (inputs) =>
    answer(
      overheadRate({
        overhead: exact(inputs, 'overhead'),
        labourHours: exact(inputs, 'labourHours'),
        jobHours: exact(inputs, 'jobHours', 0)
      }),
      plain
    ),
  'job-unit-cost': (inputs) =>
    answer(
      jobUnitCost({
        material: exact(inputs, 'material'),
        labour: exact(inputs, 'labour'),
        overheadRatePerHour: exact(inputs, 'overheadRatePerHour'),
        hours: exact(inputs, 'hours'),
        units: exact(inputs, 'units')
      }),
      (unitCost) => plain({ unitCost })
    ),
  'markup-and-margin': (inputs) => answer(markupAndMargin(exact(inputs, 'cost'), exact(inputs, 'price')), plain),
  'price-from-markup': (inputs) =>
    answer(priceFromMarkup(exact(inputs, 'cost'), exact(inputs, 'markupOnCost')), (price) => plain({ price })),
  'target-cost': (inputs) =>
    answer(targetCost(exact(inputs, 'price'), exact(inputs, 'marginOnPrice')), (cost) => plain({ cost })),
  'break-even': (inputs) =>
    answer(
      breakEven({
        price: exact(inputs, 'price'),
        variableCost: exact(inputs, 'variableCost'),
        fixedCost: exact(inputs, 'fixedCost'),
        targetProfit: exact(inputs, 'targetProfit', 0)
      }),
      (units) => units
    ),
  'price-after-fees': (inputs) =>
    answer(
      priceAfterFees(
        {
          cost: inMinor(inputs, 'cost'),
          fixedFee: inMinor(inputs, 'fixedFee', 0),
          feeShare: exact(inputs, 'feeShare', 0),
          marginOnPrice: exact(inputs, 'marginOnPrice', 0),
          feeTaxShare: ZERO,
          postageCharged: ZERO,
          feeOnPostage: false,
          taxInsideShare: ZERO
        },
        { everyMinor: 1, endsWithMinor: 0 }
      ),
      ({ shownMinor }) => ({ price: fromMinor(shownMinor) })
    ),
  'sales-tax': (inputs) =>
    answer(salesTax(minor(inputs, 'net'), exact(inputs, 'rate')), (tax) => ({ tax: fromMinor(tax) })),
  'net-from-gross': (inputs) =>
    answer(netFromGross(minor(inputs, 'gross'), exact(inputs, 'rate')), (net) => ({ net: fromMinor(net) })),
  'learning-average': (inputs) =>
    answer(learningAverage(number(inputs, 'first'), number(inputs, 'rate'), number(inputs, 'units')), (time) => time),
  'learning-unit': (inputs) =>
    answer(
      learningUnit(number(inputs, 'first'), number(inputs, 'rate'), number(inputs, 'unit')),
      ({ last, total }) => ({
        hours: last,
        total
      })
    ),
  'gross-from-yield': (inputs) =>
    answer(grossFromYield(exact(inputs, 'net'), exact(inputs, 'yieldShare')), (gross) => plain({ gross })),
  'tool-wear': (inputs) =>
    answer(
      toolWear({
        cost: exact(inputs, 'cost'),
        salvage: exact(inputs, 'salvage', 0),
        lifeUnits: exact(inputs, 'lifeUnits'),
        used: exact(inputs, 'used', 0)
      }),
      plain
    )
}
