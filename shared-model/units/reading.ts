/**
 * What an entry field gives: a value, or the reason why it cannot be read. The same shape as the results of every other
 * room; written out here because nothing stands above this room.
 */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: UnitsProblem }

export interface UnitsProblemCodes {
  readonly 'entry-empty': Record<string, never>
  readonly 'entry-unreadable': { readonly text: string }
  /** A thousands mark or a decimal mark: both readings, written with the decimal mark in force. */
  readonly 'entry-two-readings': { readonly text: string; readonly first: string; readonly second: string }
  readonly 'entry-wrong-mark': { readonly text: string; readonly mark: string }
  readonly 'entry-fraction-needs-inches': { readonly text: string }
  readonly 'entry-zero-denominator': { readonly text: string }
  readonly 'entry-negative': { readonly text: string }
  readonly 'entry-outside': {
    readonly text: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  readonly 'length-outside': {
    readonly text: string
    readonly valueMm: number
    readonly leastMm: number
    readonly mostMm: number
  }
  readonly 'money-too-fine': { readonly text: string; readonly currency: string; readonly digits: number }
  readonly 'currency-unknown': { readonly currency: string }
}

export type UnitsProblem = {
  readonly [C in keyof UnitsProblemCodes & string]: { readonly code: C; readonly figures: UnitsProblemCodes[C] }
}[keyof UnitsProblemCodes & string]

export const read = <T>(value: T): Reading<T> => ({ ok: true, value })
export const unread = (problem: UnitsProblem): { readonly ok: false; readonly problem: UnitsProblem } => ({
  ok: false,
  problem
})
