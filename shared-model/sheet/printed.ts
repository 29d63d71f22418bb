import type { Workshop } from '../design'
import {
  celsius,
  fahrenheitFromCelsius,
  grams,
  litres,
  mm,
  showDecimal,
  showLength,
  showMass,
  showMoney,
  showVolume
} from '../units'
import { type Say, sayIn } from '../words'
import type { Cell } from './sheet-data'

/** How this shop's figures are printed: each rounded on its own from the exact value. */
export interface Printed {
  readonly units: 'in' | 'mm'
  /** For words that carry figures. */
  readonly say: Say
  /** `24 11/16 in`, `627 mm`. */
  readonly length: (valueMm: number) => string
  /** Without its unit, for drawings that name the unit once. */
  readonly bare: (valueMm: number) => string
  /** Diameters of saws and parts: to 1/32 in or 0.1 mm. */
  readonly diameter: (valueMm: number) => string
  readonly volume: (valueL: number) => string
  readonly mass: (valueG: number) => string
  readonly temperature: (valueC: number) => string
  readonly money: (minor: number | null) => string
  readonly decimal: (value: number, places: number) => string
  readonly percent: (share: number) => string
  readonly duration: (seconds: number) => string
  /** A table's cell with the length on the graduation and the exact figure behind it. */
  readonly lengthCell: (valueMm: number, strong?: boolean) => Cell
  readonly diameterCell: (valueMm: number) => Cell
}

export const printed = (workshop: Workshop): Printed => {
  const { shows, currency } = workshop
  const mark = shows.decimalMark
  const length = (valueMm: number): string => showLength(mm(valueMm), shows)
  const decimal = (value: number, places: number): string => showDecimal(value, places, mark)
  const diameter = (valueMm: number): string =>
    shows.units === 'in'
      ? `Ø ${showLength(mm(valueMm), { ...shows, inchGraduation: 32 })}`
      : `Ø ${decimal(valueMm, 1)} mm`
  return {
    units: shows.units,
    say: sayIn(shows, currency),
    length,
    bare: (valueMm) => showLength(mm(valueMm), shows, { mark: false }),
    diameter,
    volume: (valueL) => showVolume(litres(valueL), shows),
    mass: (valueG) => showMass(grams(valueG), shows),
    temperature: (valueC) =>
      shows.units === 'in' ? `${decimal(fahrenheitFromCelsius(celsius(valueC)), 0)} °F` : `${decimal(valueC, 0)} °C`,
    money: (minor) => (minor === null ? 'not known' : showMoney(minor, currency, mark)),
    decimal,
    percent: (share) => `${decimal(share * 100, 0)} %`,
    duration: durationWords,
    lengthCell: (valueMm, strong = false) => ({ text: length(valueMm), exact: valueMm, strong }),
    diameterCell: (valueMm) => ({ text: diameter(valueMm), exact: valueMm })
  }
}

/** `40 s`, `12 min`, `3 h 5 min`, `2 d 4 h`. */
const durationWords = (seconds: number): string => {
  if (seconds < 60) return `${Math.round(seconds)} s`
  const minutes = Math.round(seconds / 60)
  if (minutes < 60) return `${minutes} min`
  const hours = Math.floor(minutes / 60)
  const restMin = minutes - hours * 60
  if (hours < 48) return restMin === 0 ? `${hours} h` : `${hours} h ${restMin} min`
  const days = Math.floor(hours / 24)
  return hours % 24 === 0 ? `${days} d` : `${days} d ${hours % 24} h`
}

export const cell = (words: string, strong = false): Cell => ({ text: words, strong })
export const count = (value: number): Cell => ({ text: String(value), exact: value })
/** An empty box to tick by hand. */
export const TICK: Cell = { text: '☐' }
