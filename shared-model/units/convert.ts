import {
  type Celsius,
  celsius,
  type Grams,
  grams,
  type Litres,
  litres,
  type Megapascals,
  type Mm,
  megapascals,
  mm
} from './quantity'

/**
 * Exact conversions between the inside units (mm, L, g, N, MPa, degrees Celsius) and the inch-pound ones.
 *
 *     1 in = 25.4 mm      1 ft = 12 in       1 US gal = 231 in3 = 3.785411784 L     1 US fl oz = 1/128 gal
 *     1 lb = 453.59237 g  1 oz = 1/16 lb     t(C) = (t(F) - 32) / 1.8               1 psi = 1 lbf/in2
 *     1 lbf = 4.4482216152605 N (standard gravity 9.80665 m/s2)
 *
 * @source nist-handbook-44
 */
export const MM_PER_INCH = 25.4
export const MM_PER_FOOT = 304.8
export const MM3_PER_CUBIC_INCH = 16387.064
export const MM3_PER_LITRE = 1_000_000
const LITRES_PER_US_GALLON = 3.785411784
const US_FLUID_OUNCES_PER_GALLON = 128
export const GRAMS_PER_POUND = 453.59237
const OUNCES_PER_POUND = 16
const NEWTONS_PER_POUND_FORCE = 4.4482216152605
/** Standard gravity: a gram of mass weighs this many newtons over a thousand. */
export const STANDARD_GRAVITY = 9.80665

export const mmFromInches = (inches: number): Mm => mm(inches * MM_PER_INCH)
export const inchesFromMm = (length: number): number => length / MM_PER_INCH
export const mmFromFeet = (feet: number): Mm => mm(feet * MM_PER_FOOT)
export const feetFromMm = (length: number): number => length / MM_PER_FOOT
export const litresFromUsGallons = (gallons: number): Litres => litres(gallons * LITRES_PER_US_GALLON)
export const usGallonsFromLitres = (volume: number): number => volume / LITRES_PER_US_GALLON
export const usFluidOuncesFromLitres = (volume: number): number =>
  (volume / LITRES_PER_US_GALLON) * US_FLUID_OUNCES_PER_GALLON
export const gramsFromPounds = (pounds: number): Grams => grams(pounds * GRAMS_PER_POUND)
export const poundsFromGrams = (mass: number): number => mass / GRAMS_PER_POUND
export const ouncesFromGrams = (mass: number): number => (mass / GRAMS_PER_POUND) * OUNCES_PER_POUND
export const gramsFromOunces = (ounces: number): Grams => grams((ounces / OUNCES_PER_POUND) * GRAMS_PER_POUND)
export const celsiusFromFahrenheit = (fahrenheit: number): Celsius => celsius((fahrenheit - 32) / 1.8)
export const fahrenheitFromCelsius = (temperature: number): number => temperature * 1.8 + 32
/** 1 psi = 4.4482216152605 N / (25.4 mm)2. */
export const megapascalsFromPsi = (psi: number): Megapascals =>
  megapascals((psi * NEWTONS_PER_POUND_FORCE) / MM_PER_INCH ** 2)
export const psiFromMegapascals = (stress: number): number => (stress * MM_PER_INCH ** 2) / NEWTONS_PER_POUND_FORCE
