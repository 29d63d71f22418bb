export {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  feetFromMm,
  GRAMS_PER_POUND,
  gramsFromOunces,
  gramsFromPounds,
  inchesFromMm,
  litresFromUsGallons,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM3_PER_CUBIC_INCH,
  MM3_PER_LITRE,
  megapascalsFromPsi,
  mmFromFeet,
  mmFromInches,
  ouncesFromGrams,
  poundsFromGrams,
  psiFromMegapascals,
  STANDARD_GRAVITY,
  usFluidOuncesFromLitres,
  usGallonsFromLitres
} from './convert'
export type { Currency } from './currencies'
export { CURRENCIES, CURRENCY_CODES } from './currencies'
export type { GraduationWay, LengthShows } from './graduation'
export { exactNm, graduationNm, NM_PER_MM, setOnGraduation } from './graduation'
export { minorUnitDigits, minorUnits, parseMoney, showMinor, showMoney } from './money'
export type { DecimalMark } from './parse-decimal'
export { parseDecimal } from './parse-decimal'
export type { ParseLengthOptions } from './parse-length'
export { parseLength } from './parse-length'
export type { Celsius, Grams, Litres, Megapascals, Mm, Mm2, Mm3, Mm4, Nm, Quantity } from './quantity'
export { celsius, grams, litres, megapascals, mm, mm2, mm3, mm4, nm } from './quantity'
export type { Ratio } from './ratio'
export {
  addRatio,
  compareRatio,
  divideRatio,
  multiplyRatio,
  ratio,
  ratioFromDecimal,
  ratioToNumber,
  subtractRatio
} from './ratio'
export type { Reading, UnitsProblem, UnitsProblemCodes } from './reading'
export type { Rounding } from './round-ratio'
export { roundRatio } from './round-ratio'
export type { AmountShows } from './show-amount'
export { showDecimal, showMass, showVolume } from './show-amount'
export type { ShowLengthOptions } from './show-length'
export { showLength } from './show-length'
export { splitTotal } from './split-total'
