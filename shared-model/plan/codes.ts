import type { BenchFindingCodes, BenchProblemCodes } from '../bench'
import type { BillFindingCodes, BillProblemCodes } from '../bill'
import type { CropsProblemCodes } from '../crops'
import type { CuttingFindingCodes, CuttingProblemCodes } from '../cutting'
import type { DesignProblemCodes } from '../design'
import type { LayoutFindingCodes, LayoutProblemCodes } from '../layout'
import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'
import type { PartsProblemCodes } from '../parts'
import type { PricingFindingCodes, PricingProblemCodes } from '../pricing'
import type { ProfileProblemCodes } from '../profile'
import type { ReservoirFindingCodes, ReservoirProblemCodes } from '../reservoir'
import type { RingsFindingCodes, RingsProblemCodes } from '../rings'
import type { SeatingFindingCodes, SeatingProblemCodes } from '../seating'
import type { StructureFindingCodes, StructureProblemCodes } from '../structure'
import type { UnitsProblemCodes } from '../units'

/** What only the whole plan can tell. */
export interface PlanFindingCodes {
  /** No workshop was given: the built-in one has every catalogue saw, no offcuts and no prices. */
  readonly 'workshop-built-in': { readonly saws: number }
  readonly 'nothing-to-build': Record<string, never>
  /** Figures of a part that are from memory or common practice, asked to be measured before the sheet is printed. */
  readonly 'part-unmeasured': { readonly part: string; readonly fields: number; readonly first: string }
  /** A saw that the design uses is not among those owned. */
  readonly 'saw-not-owned': { readonly saw: string; readonly diameterMm: number }
  readonly 'no-stock-on-offer': { readonly profile: string; readonly pieces: number }
}

/** Every finding code with its figures: the rooms' own interfaces put together. */
export interface FindingCodes
  extends SeatingFindingCodes,
    LayoutFindingCodes,
    ReservoirFindingCodes,
    StructureFindingCodes,
    CuttingFindingCodes,
    RingsFindingCodes,
    BenchFindingCodes,
    BillFindingCodes,
    PricingFindingCodes,
    PlanFindingCodes {}

/** Every problem code with its figures. */
export interface ProblemCodes
  extends RangeProblemCodes,
    UnitsProblemCodes,
    ProfileProblemCodes,
    PartsProblemCodes,
    SeatingProblemCodes,
    LayoutProblemCodes,
    ReservoirProblemCodes,
    StructureProblemCodes,
    CropsProblemCodes,
    CuttingProblemCodes,
    RingsProblemCodes,
    BenchProblemCodes,
    BillProblemCodes,
    PricingProblemCodes,
    DesignProblemCodes {}

export type PlanFinding = FindingOf<FindingCodes>
export type PlanProblem = ProblemOf<ProblemCodes>
