import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

export interface BenchFindingCodes {
  /** A wall thicker than the saw cuts from one side. */
  readonly 'wall-deeper-than-saw': {
    readonly sawName: string
    readonly depthMm: number
    readonly needsMm: number
  }
  /** The drilling order is valid, but a quicker one has not been ruled out. */
  readonly 'order-not-proven': { readonly handlingS: number; readonly lowerBoundS: number }
  /** The tool needs a speed that no neutral publication gives for this material. */
  readonly 'speed-common-practice': { readonly material: string; readonly rpm: number }
}

export interface BenchProblemCodes extends RangeProblemCodes {
  /** A hole, collar or riser names a saw that is not among the saws given. */
  readonly 'saw-unknown': { readonly sawId: string }
  /** A collar comes from the core of a need that is not in the batch. */
  readonly 'core-unknown': { readonly needId: string; readonly fromNeedId: string }
}

export type BenchFinding = FindingOf<BenchFindingCodes>
export type BenchProblem = ProblemOf<BenchProblemCodes>
