import { CURRENCIES } from './currencies'
import { type DecimalMark, parseDecimal } from './parse-decimal'
import { type Ratio, ratio, ratioFromDecimal } from './ratio'
import { type Reading, read, unread } from './reading'
import { type Rounding, roundRatio } from './round-ratio'

/** Digits of the minor unit; undefined for a code that ISO 4217 list one does not hold or gives no minor unit. */
export const minorUnitDigits = (currency: string): number | undefined =>
  Object.hasOwn(CURRENCIES, currency) ? CURRENCIES[currency]?.digits : undefined

/** An amount in the currency's unit, as a rational, to whole minor units by a named rule (half up by default). */
export const minorUnits = (amount: Ratio, digits: number, rule: Rounding = 'half-up'): number =>
  roundRatio(ratio(amount.num * 10n ** BigInt(digits), amount.den), rule)

/**
 * An amount of money as typed (`12.50`, `12,50` where the mark is a comma, with or without its code) in whole minor units.
 * More decimals than the currency has are refused: nothing is rounded in silence.
 */
export function parseMoney(text: string, currency: string, decimalMark: DecimalMark): Reading<number> {
  const digits = minorUnitDigits(currency)
  if (digits === undefined) return unread({ code: 'currency-unknown', figures: { currency } })
  const bare = text.trim().replace(new RegExp(`^${currency} ?| ?${currency}$`, 'i'), '')
  const amount = parseDecimal(bare, decimalMark)
  if (!amount.ok) return amount
  const scaled = ratio(amount.value.num * 10n ** BigInt(digits), amount.value.den)
  if (scaled.den !== 1n) return unread({ code: 'money-too-fine', figures: { text, currency, digits } })
  const most = BigInt(MOST_MINOR)
  if (scaled.num > most || scaled.num < -most) {
    const figures = { text, value: Number(scaled.num), least: -MOST_MINOR, most: MOST_MINOR }
    return unread({ code: 'entry-outside', figures })
  }
  return read(Number(scaled.num))
}

/** Largest amount that is read: leaves room for sums and products in exact integers. */
const MOST_MINOR = 1e12

/** Whole minor units as `12.50 USD`, without an Intl table; a code that is not known is shown with two digits. */
export const showMoney = (minor: number, currency: string, decimalMark: DecimalMark): string =>
  `${showMinor(minor, minorUnitDigits(currency) ?? 2, decimalMark)} ${currency}`

/** The bare figure of an amount in whole minor units, with as many decimals as its currency has digits. */
export function showMinor(minor: number, digits: number, decimalMark: DecimalMark): string {
  const whole = roundRatio(ratioFromDecimal(minor), 'half-even')
  const figures = String(Math.abs(whole)).padStart(digits + 1, '0')
  const part = digits === 0 ? '' : decimalMark + figures.slice(-digits)
  return `${whole < 0 ? '-' : ''}${figures.slice(0, figures.length - digits)}${part}`
}
