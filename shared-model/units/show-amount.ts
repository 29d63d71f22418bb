import {
  GRAMS_PER_POUND,
  ouncesFromGrams,
  poundsFromGrams,
  usFluidOuncesFromLitres,
  usGallonsFromLitres
} from './convert'
import type { DecimalMark } from './parse-decimal'
import type { Grams, Litres } from './quantity'
import { ratioFromDecimal } from './ratio'
import { roundRatio } from './round-ratio'

export interface AmountShows {
  readonly units: 'in' | 'mm'
  readonly decimalMark: DecimalMark
}

/** A decimal with at most so many places, half to even, without trailing zeros; one beyond exact integers as it stands (`1e+20`). Throws on a value that is not finite. */
export function showDecimal(value: number, places: number, decimalMark: DecimalMark): string {
  if (Number.isFinite(value) && Math.abs(value) * 10 ** places >= Number.MAX_SAFE_INTEGER)
    return String(value).replace('.', decimalMark)
  const scaled = roundRatio(multiplyByTen(value, places), 'half-even')
  const digits = String(Math.abs(scaled)).padStart(places + 1, '0')
  const whole = digits.slice(0, digits.length - places)
  const part = digits.slice(digits.length - places).replace(/0+$/, '')
  return `${scaled < 0 ? '-' : ''}${whole}${part === '' ? '' : decimalMark + part}`
}

/** Litres from 1 L, millilitres below; US gallons from a quarter gallon, US fluid ounces below. */
export function showVolume(volume: Litres, shows: AmountShows): string {
  const { decimalMark } = shows
  if (shows.units === 'mm') {
    return Math.abs(volume) >= 1
      ? `${showDecimal(volume, 2, decimalMark)} L`
      : `${showDecimal(volume * 1000, 0, decimalMark)} mL`
  }
  const gallons = usGallonsFromLitres(volume)
  return Math.abs(gallons) >= 0.25
    ? `${showDecimal(gallons, 2, decimalMark)} US gal`
    : `${showDecimal(usFluidOuncesFromLitres(volume), 1, decimalMark)} US fl oz`
}

/** Kilograms from 1 kg, grams below; pounds from 1 lb, ounces below. */
export function showMass(mass: Grams, shows: AmountShows): string {
  const { decimalMark } = shows
  if (shows.units === 'mm') {
    return Math.abs(mass) >= 1000
      ? `${showDecimal(mass / 1000, 2, decimalMark)} kg`
      : `${showDecimal(mass, 0, decimalMark)} g`
  }
  return Math.abs(mass) >= GRAMS_PER_POUND
    ? `${showDecimal(poundsFromGrams(mass), 1, decimalMark)} lb`
    : `${showDecimal(ouncesFromGrams(mass), 1, decimalMark)} oz`
}

function multiplyByTen(value: number, places: number) {
  const exact = ratioFromDecimal(value)
  return { num: exact.num * 10n ** BigInt(places), den: exact.den }
}
