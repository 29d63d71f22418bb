import {
  minorUnitDigits,
  minorUnits,
  type Rounding,
  ratioFromDecimal,
  showMinor,
  splitTotal
} from '../../../shared-model/units'
import { decimal, number, numbers, text, type Work } from './answer'

/** Rounding, splitting and digits of money. */
export const AMOUNT_QUANTITIES: Readonly<Record<string, Work>> = {
  'round-money': (inputs) => {
    const amount = ratioFromDecimal(decimal(inputs, 'amount'))
    const digits = number(inputs, 'digits')
    const rounded = (rule: Rounding): string => showMinor(minorUnits(amount, digits, rule), digits, '.')
    return { halfUp: rounded('half-up'), halfEven: rounded('half-even'), up: rounded('up'), down: rounded('down') }
  },
  'split-total': (inputs) => ({ parts: splitTotal(numbers(inputs, 'weights'), number(inputs, 'total')) }),
  'minor-unit-digits': (inputs) => {
    const digits = minorUnitDigits(text(inputs, 'currency'))
    return digits === undefined ? { problem: 'currency-unknown' } : { digits }
  }
}
