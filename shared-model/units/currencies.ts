import list from './currencies.json'

export interface Currency {
  readonly digits: number
  readonly name: string
}

/**
 * ISO 4217 list one: code, digits of the minor unit, name. Kept as data because host tables give other digits for some.
 *
 * @source iso-4217
 */
export const CURRENCIES: Readonly<Record<string, Currency>> = list.currencies

export const CURRENCY_CODES: readonly string[] = Object.keys(CURRENCIES)
