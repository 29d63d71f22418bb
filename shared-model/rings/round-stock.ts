/**
 * The sheet plan's own view of a batch. Webs are put into the parts: every part grows by half a web all round and the
 * sheet's usable field grows by half a web past its margins, so that grown parts may touch each other and the field.
 */
export interface RoundPart {
  readonly needId: string
  /** Cut diameter and a web. */
  readonly acrossMm: number
  readonly count: number
}

export interface PlatePart {
  readonly needId: string
  readonly widthMm: number
  readonly heightMm: number
  readonly count: number
}

export interface Parts {
  readonly rounds: readonly RoundPart[]
  readonly plates: readonly PlatePart[]
}

/** A rectangle in the usable field's coordinates. */
export interface Area {
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly heightMm: number
}

export interface PlacedRound {
  readonly needId: string
  readonly xMm: number
  readonly yMm: number
  readonly acrossMm: number
}

export type PlacedPlate = Area & { readonly needId: string }

export interface Filled {
  readonly rounds: readonly PlacedRound[]
  readonly plates: readonly PlacedPlate[]
}

/** Rounding allowed where a part just fits. */
export const FIT_MM = 1e-7

export const partsLeft = (parts: Parts, filled: Filled): Parts => {
  const taken = new Map<string, number>()
  for (const { needId } of [...filled.rounds, ...filled.plates]) taken.set(needId, (taken.get(needId) ?? 0) + 1)
  const left = <P extends RoundPart | PlatePart>(all: readonly P[]): P[] =>
    all.map((part) => ({ ...part, count: part.count - (taken.get(part.needId) ?? 0) })).filter(({ count }) => count > 0)
  return { rounds: left(parts.rounds), plates: left(parts.plates) }
}

export const nothingLeft = (parts: Parts): boolean => parts.rounds.length === 0 && parts.plates.length === 0

/** Material that parts take, webs included, in mm²: by what fillings are compared. */
export const areaOf = (parts: Parts): number =>
  parts.rounds.reduce((sum, { acrossMm, count }) => sum + (Math.PI / 4) * acrossMm ** 2 * count, 0) +
  parts.plates.reduce((sum, { widthMm, heightMm, count }) => sum + widthMm * heightMm * count, 0)
