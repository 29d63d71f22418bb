import type { Design } from '../design'
import type { Channel } from '../layout'

/** What goes on a row beside its cups. */
export type Fittings = Pick<Channel, 'supports' | 'openings'>

const NONE: Fittings = { supports: [], openings: [] }
/** Feet at a fifth from both ends, of a size that a hand cuts from a batten; starting values. */
const FOOT = { alongMm: 30, acrossMm: 60, heightMm: 20 }
const FOOT_SHARES = [0.2, 0.8]

/**
 * Fittings to try for a row of this length, the first that stops nothing is taken: those of the design's channel of the
 * same profile at the same shares of the length, its openings or its supports alone, none, and two feet.
 */
export function fittingsToTry(design: Design, profileId: string, lengthMm: number): readonly Fittings[] {
  const model = design.channels.find((each) => each.profileId === profileId)
  const feet = {
    supports: FOOT_SHARES.map((share, at) => ({ ...FOOT, id: `f${at + 1}`, atMm: share * lengthMm })),
    openings: []
  }
  if (model === undefined || model.supports.length + model.openings.length === 0) return [NONE, feet]
  const share = lengthMm / model.lengthMm
  const supports = model.supports.map((each) => ({ ...each, atMm: each.atMm * share }))
  const openings = model.openings.map((each) =>
    each.face === 'datum-end' || each.face === 'far-end' ? each : { ...each, atMm: each.atMm * share }
  )
  return [{ supports, openings }, { supports: [], openings }, { supports, openings: [] }, NONE, feet]
}
