import type { Shows } from '../design'
import { grams, litres, mm, showDecimal, showLength, showMass, showMoney, showVolume } from '../units'

/** How figures are said to this reader: in the shop's units, on its graduation, with its decimal mark. */
export interface Say {
  /** A length to cut or mark, on the shop's graduation. */
  readonly length: (lengthMm: number) => string
  /** A clearance, land, gap or wall: finer than the shop's graduation, so that a limit just missed reads so. */
  readonly fine: (lengthMm: number) => string
  readonly volume: (litres: number) => string
  readonly mass: (grams: number) => string
  /** A share from 0 to 1 as percent. */
  readonly share: (share: number) => string
  readonly percent: (percent: number) => string
  readonly number: (value: number, places?: number) => string
  readonly degrees: (degrees: number) => string
  readonly time: (seconds: number) => string
  readonly money: (minor: number) => string
}

export type SayShows = Pick<Shows, 'units' | 'inchGraduation' | 'mmGraduation' | 'decimalMark'>

/** Ways of saying figures in a shop's units. Money is said in the currency given. */
export const sayIn = (shows: SayShows, currency = ''): Say => {
  const number = (value: number, places = 2): string =>
    Number.isFinite(value) ? showDecimal(value, places, shows.decimalMark) : 'no number'
  const finite = (value: number, said: () => string): string => (Number.isFinite(value) ? said() : 'no number')
  return {
    length: (lengthMm) => finite(lengthMm, () => showLength(mm(lengthMm), shows)),
    fine: (lengthMm) => (shows.units === 'mm' ? `${number(lengthMm, 1)} mm` : `${number(lengthMm / 25.4, 2)} in`),
    volume: (amount) => finite(amount, () => showVolume(litres(amount), shows)),
    mass: (amount) => finite(amount, () => showMass(grams(amount), shows)),
    share: (share) => `${number(share * 100, 0)} %`,
    percent: (percent) => `${number(percent, 2)} %`,
    number,
    degrees: (degrees) => `${number(degrees, 1)}°`,
    time: (seconds) => timeText(seconds, number),
    money: (minor) =>
      finite(minor, () => (currency === '' ? number(minor, 0) : showMoney(minor, currency, shows.decimalMark)))
  }
}

const timeText = (seconds: number, number: (value: number, places?: number) => string): string => {
  if (seconds < 90) return `${number(seconds, 0)} s`
  if (seconds < 5_400) return `${number(seconds / 60, 0)} min`
  return seconds < 172_800 ? `${number(seconds / 3_600, 1)} h` : `${number(seconds / 86_400, 1)} days`
}
