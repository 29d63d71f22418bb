/**
 * Three kinds of failure, never mixed: a problem (cannot be worked out) is a value, a finding (worked out, but mind this)
 * is a value, a bug throws. Each room declares an interface that maps its codes to the figures that belong to them;
 * `words` turns every code and its figures into plain English and does not compile when one is missing.
 */
export type Figure = number | string

/** Where a finding or problem belongs; the most exact place that is known. */
export interface Where {
  readonly channelId?: string
  readonly siteId?: string
  readonly openingId?: string
  readonly seatId?: string
  readonly partId?: string
  /** Dotted path of the field in the Design or Workshop that clears it, e.g. `channels.c1.fillShare`. */
  readonly field?: string
}

export type ProblemOf<Codes> = {
  readonly [C in keyof Codes & string]: {
    readonly code: C
    readonly figures: Codes[C]
    readonly where?: Where
  }
}[keyof Codes & string]

export type Severity = 'stop' | 'warn' | 'note'

/** One unambiguous change that clears a finding: set the field at this path to this value. */
export interface Fix {
  readonly field: string
  readonly value: number | string | boolean
}

export type FindingOf<Codes> = {
  readonly [C in keyof Codes & string]: {
    readonly code: C
    readonly severity: Severity
    readonly figures: Codes[C]
    readonly where: Where
    /** Id in the register of sources: where the limit comes from. */
    readonly source?: string
    readonly fix?: Fix
  }
}[keyof Codes & string]

export type Result<T, P> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: P }

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })
export const failed = <P>(problem: P): { readonly ok: false; readonly problem: P } => ({
  ok: false,
  problem
})

/** The problems any room can return: a value outside the range a formula holds for, both bounds named. */
export interface RangeProblemCodes {
  readonly 'out-of-range': {
    readonly what: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  readonly 'not-finite': { readonly what: string }
}

/** A search's budget: a count of work units that makes runs repeatable, and a host's clock that only ends it early. */
export interface Budget {
  readonly work: number
  readonly stop: () => boolean
  /** What the host's clock has left, for a solver library that keeps time itself; left out: without end. */
  readonly secondsLeft?: () => number
}
