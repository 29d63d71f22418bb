import { type Cup, collarRing } from '../parts'
import type { PartIndex } from './part-index'
import type { StackItem } from './seat'

/**
 * A part as the stack solver sees it: a rim over a straight taper, measured from its top down. A ring is a rim alone.
 * `opening` is what it offers to the next part: straight (a ring's hole) or tapering (a cup's inside).
 */
export interface Body {
  readonly partId: string
  readonly name: string
  readonly kind: StackItem['kind']
  readonly rimMm: number
  /** Depth of the rim band; the whole thickness of a ring. */
  readonly rimDepthMm: number
  /** Diameter just under the rim and at the lower edge; equal to the rim's on a ring. */
  readonly underRimMm: number
  readonly lowerMm: number
  readonly heightMm: number
  readonly wallMm: number
  readonly flexible: boolean
  /** Its lower edge is open, so it can stand round an opening instead of failing to enter it. */
  readonly openBelow: boolean
  /** Soft foam: the share of its own outside that it gives; null for a part that is no ring of foam. */
  readonly squeezeShare: number | null
  readonly ring: boolean
  readonly opening: Opening
  /** What a bored bottom keeps round its hole, as thick as the wall: the hole's diameter; null where there is none. */
  readonly flangeHoleMm: number | null
  readonly floodedShare: number
}

/** A round opening from its upper edge down: diameter there, at its lower edge, and how deep it is. */
export interface Opening {
  readonly mouthMm: number
  readonly lowerMm: number
  readonly depthMm: number
  /** Diameter of the hole in a floor at its lower edge, on which whatever is wider comes to stand: 0 closed; null no floor. */
  readonly floorHoleMm: number | null
}

/** How much a soft plant collar gives, as foam does. @source foam-squeeze */
const PLANT_COLLAR_SQUEEZE = 0.15

/** The body of one stack item; undefined when the part is not in the index. */
export function bodyOf(item: StackItem, index: PartIndex): Body | undefined {
  switch (item.kind) {
    case 'cup': {
      const cup = index.cups.get(item.partId)
      return cup && cupBody(cup, 'cup', cup.id, cup.name, cup.heightMm, false, cup.floodedShare, null)
    }
    case 'riser': {
      const riser = index.risers.get(item.partId)
      if (!riser) return undefined
      const { cup, opened } = riser
      // Bored: the wall stays whole to the bottom, which keeps a flange round the hole. Cut: the lower part is gone.
      const keptMm = opened.by === 'cut' ? Math.min(opened.belowRimMm, cup.heightMm) : cup.heightMm
      const flangeMm = opened.by === 'bore' ? opened.sawDiameterMm : null
      return cupBody(cup, 'riser', riser.id, riser.name, keptMm, true, 1, flangeMm)
    }
    case 'collar': {
      const collar = index.collars.get(item.partId)
      const outer = collar && index.saws.get(collar.outerSawId)
      const inner = collar && index.saws.get(collar.innerSawId)
      if (!collar || !outer || !inner) return undefined
      const cut = collarRing(collar, outer, inner)
      if (!cut.ok) return undefined
      const ring = cut.value
      return {
        ...disc(collar.id, collar.name, 'collar', ring.outsideMm, collar.thicknessMm),
        flexible: collar.foam,
        squeezeShare: collar.foam ? collar.squeezeShare : null,
        opening: { mouthMm: ring.holeMm, lowerMm: ring.holeMm, depthMm: collar.thicknessMm, floorHoleMm: null }
      }
    }
    case 'plant-collar': {
      const collar = index.plantCollars.get(item.partId)
      if (!collar) return undefined
      return {
        ...disc(collar.id, collar.name, 'plant-collar', collar.outsideMm, collar.thicknessMm),
        flexible: true,
        squeezeShare: PLANT_COLLAR_SQUEEZE,
        opening: { mouthMm: 0, lowerMm: 0, depthMm: collar.thicknessMm, floorHoleMm: null }
      }
    }
  }
}

/** Tangent of the half-angle of a body's taper; 0 where its wall is parallel. */
export function taperTangent(body: Body): number {
  const run = body.heightMm - body.rimDepthMm
  return run > 0 ? Math.max(0, body.underRimMm - body.lowerMm) / 2 / run : 0
}

/** Depth below the body's top at which its taper measures a diameter between its lower edge and its rim. */
export function depthOfDiameter(body: Body, diameterMm: number): number {
  const tangent = taperTangent(body)
  if (tangent === 0) return body.rimDepthMm
  return body.rimDepthMm + (body.underRimMm - diameterMm) / 2 / tangent
}

function cupBody(
  cup: Cup,
  kind: 'cup' | 'riser',
  id: string,
  name: string,
  heightMm: number,
  openBelow: boolean,
  floodedShare: number,
  flangeHoleMm: number | null
): Body {
  const run = Math.max(cup.heightMm - cup.rimThicknessMm, 1e-9)
  const taper = (cup.bodyUnderRimMm - cup.bottomMm) / run
  const lowerMm = cup.bodyUnderRimMm - taper * Math.max(0, heightMm - cup.rimThicknessMm)
  // A bottom, whole or bored, is as thick as the wall.
  const floorMm = openBelow && flangeHoleMm === null ? 0 : Math.min(cup.wallMm, heightMm)
  return {
    partId: id,
    name,
    kind,
    rimMm: cup.rimOutsideMm,
    rimDepthMm: Math.min(cup.rimThicknessMm, heightMm),
    underRimMm: cup.bodyUnderRimMm,
    lowerMm,
    heightMm,
    wallMm: cup.wallMm,
    flexible: cup.flexible,
    openBelow,
    squeezeShare: null,
    ring: false,
    opening: {
      mouthMm: cup.bodyUnderRimMm - 2 * cup.wallMm,
      lowerMm: Math.max(0, lowerMm + floorMm * taper - 2 * cup.wallMm),
      depthMm: heightMm - floorMm,
      floorHoleMm: openBelow ? flangeHoleMm : 0
    },
    flangeHoleMm,
    floodedShare
  }
}

function disc(id: string, name: string, kind: Body['kind'], outsideMm: number, thicknessMm: number): Body {
  return {
    partId: id,
    name,
    kind,
    rimMm: outsideMm,
    rimDepthMm: thicknessMm,
    underRimMm: outsideMm,
    lowerMm: outsideMm,
    heightMm: thicknessMm,
    wallMm: thicknessMm,
    flexible: false,
    openBelow: true,
    squeezeShare: null,
    ring: true,
    opening: { mouthMm: outsideMm, lowerMm: outsideMm, depthMm: thicknessMm, floorHoleMm: null },
    flangeHoleMm: null,
    floodedShare: 0
  }
}
