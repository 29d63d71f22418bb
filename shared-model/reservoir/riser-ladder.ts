/**
 * How each stage's gap is got at the fill line: the lift a cup needs, and the riser that gives it.
 *
 * Lift = fill line + wanted gap − underside of the cup hung straight in the face. A riser keeps its cup's rim end and wedges
 * where its body measures the opening, so it lifts by the distance from its rim to there, less what a flexible wall gives:
 * the opening and the cup decide the lift, the cut does not, as long as it is at least 3 mm further from the rim.
 * @source riser-ladder
 */
import type { Cup, HoleSaw } from '../parts'
import { RISER_CUT_MARGIN_MM, riserProudMm } from '../seating'
import type { Rung } from './channel-water'
import { STAGES, type StageGaps } from './stage'

/** Lifts closer than this are the same, mm. */
const CLOSE_MM = 0.05

export interface LadderWanted {
  readonly levelMm: number
  readonly gaps: StageGaps
  /** Underside of the plant's cup hung on its rim in the face, above the floor at the deepest point; the lowest of the channel. */
  readonly hungMm: number
  readonly plantCup: Cup
  readonly holeMm: number
  readonly cups: readonly Cup[]
  readonly saws: readonly HoleSaw[]
  /** Widest hole the face takes. */
  readonly widestHoleMm: number
}

export function riserLadder(wanted: LadderWanted): readonly Rung[] {
  const carrying = wanted.cups.filter((cup) => carries(cup, wanted.plantCup))
  return STAGES.map((stage) => rung(stage, wanted.levelMm + wanted.gaps[stage] - wanted.hungMm, wanted, carrying))
}

function rung(stage: Rung['stage'], liftMm: number, wanted: LadderWanted, carrying: readonly Cup[]): Rung {
  if (liftMm <= CLOSE_MM) return { stage, liftMm: Math.max(0, liftMm), how: { kind: 'none-needed' } }
  const { holeMm, widestHoleMm } = wanted
  const inHole = leastReach(carrying, [holeMm], (cup, openingMm) => reach(cup, openingMm, liftMm))
  if (inHole) return { stage, liftMm, how: { kind: 'riser', ...inHole } }
  const holesMm = wanted.saws.map((saw) => saw.diameterMm + saw.oversizeMm).filter((sawnMm) => sawnMm <= widestHoleMm)
  const bySaw = leastReach(carrying, holesMm, (cup, openingMm) => reach(cup, openingMm, liftMm))
  if (bySaw) return { stage, liftMm, how: { kind: 'other-saw', openingMm: bySaw.openingMm, cupId: bySaw.cupId } }
  const exact = leastReach(carrying, [widestHoleMm], (cup, widestMm) => exactOpening(cup, liftMm, widestMm))
  if (exact) return { stage, liftMm, how: { kind: 'other-saw', openingMm: exact.openingMm, cupId: exact.cupId } }
  const mostMm = carrying.reduce((most, cup) => Math.max(most, riserProudMm(cup, holeMm) ?? 0), 0)
  return { stage, liftMm, how: { kind: 'no-cup-reaches', mostMm } }
}

interface Reach {
  readonly cupId: string
  readonly cutBelowRimMm: number
  readonly openingMm: number
  readonly proudMm: number
}

/** A riser of this cup in this opening, where it lifts enough and has wall left below the edge. */
function reach(cup: Cup, openingMm: number, liftMm: number): Reach | null {
  const proudMm = riserProudMm(cup, openingMm)
  if (proudMm === null || proudMm < liftMm - CLOSE_MM) return null
  // The wall must measure the opening at the cut margin too: the press carries the riser that much further down.
  const cutBelowRimMm = wedgeDepth(cup, openingMm) + RISER_CUT_MARGIN_MM
  return cutBelowRimMm <= cup.heightMm ? { cupId: cup.id, cutBelowRimMm, openingMm, proudMm } : null
}

/** The opening, of no saw at hand, in which this cup would lift by just so much. */
function exactOpening(cup: Cup, liftMm: number, widestHoleMm: number): Reach | null {
  const run = cup.heightMm - cup.rimThicknessMm
  const perMm = run > 0 ? (cup.bodyUnderRimMm - cup.bottomMm) / run : 0
  if (perMm <= 0) return null
  // The press of a flexible wall is the same at any depth that is deeper than it.
  const middleMm = (cup.bodyUnderRimMm + cup.bottomMm) / 2
  const pressMm = wedgeDepth(cup, middleMm) - (riserProudMm(cup, middleMm) ?? 0)
  const openingMm = cup.bodyUnderRimMm - (liftMm + pressMm - cup.rimThicknessMm) * perMm
  return openingMm <= widestHoleMm ? reach(cup, openingMm, liftMm) : null
}

function wedgeDepth(cup: Cup, openingMm: number): number {
  const run = cup.heightMm - cup.rimThicknessMm
  return cup.rimThicknessMm + ((cup.bodyUnderRimMm - openingMm) * run) / (cup.bodyUnderRimMm - cup.bottomMm)
}

/** The plant's cup hangs on the riser's rim: it goes into its mouth and its own rim does not. */
function carries(riser: Cup, plant: Cup): boolean {
  const mouthMm = riser.bodyUnderRimMm - 2 * riser.wallMm
  return plant.rimOutsideMm > mouthMm && plant.bodyUnderRimMm <= mouthMm
}

/** The riser that lifts by the least of those that lift enough: of the first opening and cup where several do. */
function leastReach(
  cups: readonly Cup[],
  openingsMm: readonly number[],
  of: (cup: Cup, openingMm: number) => Reach | null
): Omit<Reach, 'proudMm'> | null {
  let best: Reach | null = null
  for (const openingMm of openingsMm)
    for (const cup of cups) {
      const one = of(cup, openingMm)
      if (one && (!best || one.proudMm < best.proudMm)) best = one
    }
  if (!best) return null
  const { cupId, cutBelowRimMm, openingMm } = best
  return { cupId, cutBelowRimMm, openingMm }
}
