import type { MaterialId } from '../materials'
import type { EvidenceByField } from '../sources'

/** A tapered body open at the top: net pots, drinking cups. Diameters are outside ones. */
export interface Cup {
  readonly id: string
  readonly name: string
  readonly rimOutsideMm: number
  /** Height of the rim band, part of `heightMm`. */
  readonly rimThicknessMm: number
  readonly bodyUnderRimMm: number
  readonly bottomMm: number
  readonly heightMm: number
  readonly wallMm: number
  readonly flexible: boolean
  /** Share of the body's inside that solution enters: 0 sealed, a slotted cup its pore share. */
  readonly floodedShare: number
  readonly material: MaterialId
  readonly massG: number
  readonly evidence: EvidenceByField
}

/** A cup with its bottom opened: cut at a distance below the rim, or bored with a saw. The rim end is kept. */
export interface Riser {
  readonly id: string
  readonly name: string
  readonly cup: Cup
  readonly opened:
    | { readonly by: 'cut'; readonly belowRimMm: number }
    | { readonly by: 'bore'; readonly sawDiameterMm: number; readonly sawId: string }
}

/** A ring cut from sheet with two concentric hole saws. */
export interface Collar {
  readonly id: string
  readonly name: string
  readonly outerSawId: string
  readonly innerSawId: string
  readonly thicknessMm: number
  readonly foam: boolean
  /** How much wider than an opening a foam ring may be and still press in flush, as a share of its outside. */
  readonly squeezeShare: number
  readonly material: MaterialId
  readonly evidence: EvidenceByField
}

/** A soft disc with a slit that holds the stem in the cup's mouth. Bought or cut with one saw. */
export interface PlantCollar {
  readonly id: string
  readonly name: string
  readonly outsideMm: number
  readonly thicknessMm: number
  /** Cut from foam sheet with this saw; null when bought. */
  readonly sawId: string | null
  readonly evidence: EvidenceByField
}

export interface HoleSaw {
  readonly id: string
  readonly name: string
  /** Over the tooth set (ASME B94.54): the hole it leaves, to first order. */
  readonly diameterMm: number
  readonly kerfMm: number
  readonly depthMm: number
  /** Measured oversize of the hole it leaves. */
  readonly oversizeMm: number
  readonly evidence: EvidenceByField
}

export type ClosureKind = 'slip-cap' | 'glued-plate' | 'plug' | 'moulded-cap'
export type JointMethod = 'solvent-cement' | 'silicone-neutral' | 'silicone-acetoxy' | 'gasket' | 'push-fit' | 'tape'

/** What seals an end, and what it holds on. */
export interface EndClosure {
  readonly id: string
  readonly name: string
  readonly kind: ClosureKind
  readonly joint: JointMethod
  readonly holdsOn: {
    readonly materials: readonly MaterialId[]
    readonly shape: 'rectangle' | 'round'
    /** Outside size of the profile that it is made for; null on a plate cut to fit any size. */
    readonly widthMm: number | null
    readonly heightMm: number | null
    readonly toleranceMm: number
  }
  /** What it adds to the channel's overall length beyond the cut end. */
  readonly addsLengthMm: number
  /** How far it reaches into the bore from the cut end. */
  readonly insideDepthMm: number
  /** How far it covers the outside from the cut end. */
  readonly outsideDepthMm: number
  /** How far it stands proud of the profile's outside, on each side. */
  readonly proudMm: number
  readonly material: MaterialId
  readonly massG: number
  readonly evidence: EvidenceByField
}
