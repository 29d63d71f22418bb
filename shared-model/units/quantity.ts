/**
 * Branded quantities for function borders: a number that says which unit it is in.
 * A brand names the unit; it does not prove that a value is finite or in range.
 * Records carry the unit in the field's name instead (`widthMm: number`).
 */
declare const unit: unique symbol

export type Quantity<U extends string> = number & { readonly [unit]: U }

export type Mm = Quantity<'mm'>
export type Mm2 = Quantity<'mm2'>
export type Mm3 = Quantity<'mm3'>
/** Second moment of area. */
export type Mm4 = Quantity<'mm4'>
/** Whole nanometres: the exact length that decides whether a piece fits a bar (1/64 in = 396 875 nm). */
export type Nm = Quantity<'nm'>
export type Litres = Quantity<'L'>
export type Grams = Quantity<'g'>
export type Megapascals = Quantity<'MPa'>
export type Celsius = Quantity<'degC'>

export const mm = (value: number): Mm => value as Mm
export const mm2 = (value: number): Mm2 => value as Mm2
export const mm3 = (value: number): Mm3 => value as Mm3
export const mm4 = (value: number): Mm4 => value as Mm4
export const nm = (value: number): Nm => value as Nm
export const litres = (value: number): Litres => value as Litres
export const grams = (value: number): Grams => value as Grams
export const megapascals = (value: number): Megapascals => value as Megapascals
export const celsius = (value: number): Celsius => value as Celsius
