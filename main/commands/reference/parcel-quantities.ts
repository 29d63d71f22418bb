import { billedParcelWeight, lengthPlusGirth, type ParcelRules, type Sides } from '../../../shared-model/pricing'
import { answer, InputMissing, number, numbers, text, type Work } from './answer'
import type { Fields } from './check'

/** Parcels, in the inches and pounds of the published rules: lengths, weights and divisor belong together. */
export const PARCEL_QUANTITIES: Readonly<Record<string, Work>> = {
  'length-plus-girth': (inputs) => answer(lengthPlusGirth(sides(inputs)), (inches) => ({ inches })),
  'billed-parcel-weight': (inputs) =>
    answer(
      billedParcelWeight(sides(inputs), number(inputs, 'actualLb'), {
        threshold: number(inputs, 'thresholdIn3', 0),
        divisor: number(inputs, 'divisor'),
        sideStep: inputs.sideRounding === 'none' ? 0 : 1,
        sideRounding: rounding(text(inputs, 'sideRounding', 'nearest')),
        weightStep: 1
      }),
      (billedLb) => ({ billedLb })
    )
}

function sides(inputs: Fields): Sides {
  const [first, second, third, ...more] = numbers(inputs, 'sidesIn')
  if (first === undefined || second === undefined || third === undefined || more.length > 0) {
    throw new InputMissing('inputs.sidesIn is not three numbers')
  }
  return [first, second, third]
}

const rounding = (name: string): ParcelRules['sideRounding'] => (name === 'up' || name === 'down' ? name : 'nearest')
