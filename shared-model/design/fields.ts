import { z } from './zod-setup'

/** The bounds of a number field, so that a refusal names both. */
export interface Bounds {
  readonly least: number
  readonly most: number
}

// zod carries one text for a failed check; the bounds of the field are looked up by that text.
const boundsByText = new Map<string, Bounds>()

export const boundsOf = (text: string): Bounds | undefined => boundsByText.get(text)

const keyFor = (least: number, most: number): string => {
  const text = `${least}..${most}`
  boundsByText.set(text, { least, most })
  return text
}

/** A finite number between two bounds. */
export const num = (least: number, most: number) => {
  const error = keyFor(least, most)
  return z.number({ error }).min(least, { error }).max(most, { error })
}

/** A whole number between two bounds. */
export const whole = (least: number, most: number) => {
  const error = keyFor(least, most)
  return z.number({ error }).min(least, { error }).max(most, { error }).int({ error })
}

/** A list with a length between two bounds. */
export const listOf = <S extends z.ZodType>(item: S, most: number, least = 0) => {
  const error = keyFor(least, most)
  return z.array(item).min(least, { error }).max(most, { error })
}

export const text = (most: number) => z.string().max(most, { error: keyFor(0, most) })

/** Ids take part in paths and file names: letters, digits, dot, hyphen, underscore, first a letter or digit. */
export const id = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,95}$/, { error: 'letters, digits, dot, hyphen, underscore' })

export const name = text(200)

/** An ISO date, or empty where it is not known. */
export const dateOrEmpty = z
  .string()
  .regex(/^(\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01]))?$/, { error: 'a date as YYYY-MM-DD, or empty' })

export const yesNo = z.enum(['yes', 'no', 'unknown'])

/** Lengths of things that fit a room. */
export const length = num(0, 20_000)
export const signedLength = num(-20_000, 20_000)
/** Money: whole minor units, never negative, small enough that a batch's sums stay exact. */
export const minor = whole(0, 1_000_000_000)
export const minorOrNull = minor.nullable()
export const percent = num(0, 100)
