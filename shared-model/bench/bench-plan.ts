export type OperationKind =
  | 'mark'
  | 'cut'
  | 'deburr'
  | 'mark-holes'
  | 'pilot'
  | 'saw'
  | 'score'
  | 'saw-inner'
  | 'saw-through'
  | 'cut-collar-blank'
  | 'bore-cup'
  | 'cut-riser'
  | 'wash'
  | 'fit-end'
  | 'fit-opening'
  | 'cure'
  | 'leak-test'
  | 'label'
  | 'pack'

/** One step at the bench, for the whole batch. */
export interface BenchStep {
  readonly id: string
  readonly kind: OperationKind
  readonly needs: readonly string[]
  /** Saw, blade or other cutter; null: by hand. */
  readonly toolId: string | null
  readonly toolName: string
  readonly machine: 'drill' | 'saw' | 'hand' | 'wait'
  readonly drillId: string | null
  readonly rpmCeiling: number | null
  readonly rpmGrade: 'published' | 'common-practice' | null
  readonly setUpS: number
  readonly runS: number
  readonly waitS: number
  readonly serves: readonly string[]
  readonly count: number
  /** Figures the words need: diameters, lengths, cut heights. */
  readonly figures: Readonly<Record<string, number | string>>
  readonly cautionIds: readonly string[]
}

/** A hole as it is marked out: a running dimension from the datum end. */
export interface DrillRow {
  readonly channelId: string
  readonly holeId: string
  readonly mark: string
  readonly atMm: number
  readonly face: string
  readonly heightMm: number | null
  readonly diameterMm: number
  readonly sawId: string | null
  readonly sawName: string
  readonly concentric: readonly string[]
  readonly sits: string
  /** `atMm` rounded on its own to the shop's graduation, and what the rounding moved it by. */
  readonly markedAtMm: number
  readonly roundingMm: number
}

export interface BenchPlan {
  readonly steps: readonly BenchStep[]
  readonly holes: readonly DrillRow[]
  readonly toolChanges: number
  readonly leastToolChanges: number
  /** No order has fewer tool changes, or (with times for changes and clampings) none takes less time. */
  readonly proven: boolean
  /** No order takes less handling time; without times: none has fewer clampings at so few changes either. */
  readonly leastProven: boolean
  /** `least-time` where the shop has times for a tool change or a mount, else fewest changes, then fewest mounts. */
  readonly soughtBy: 'least-time' | 'fewest-changes'
  /** Times a piece is clamped for drilling, the first included. */
  readonly mounts: number
  readonly leastMounts: number
  /** Seconds of tool changes and mounts, and a proven lower bound. */
  readonly handlingS: number
  readonly leastHandlingS: number
  readonly graduationMm: number
  /** Largest rounding error of a hole position in this build, and the most that the graduation allows. */
  readonly largestRoundingMm: number
  readonly roundingLimitMm: number
  readonly setUpS: number
  readonly runS: number
  /** Worked time of the batch. */
  readonly workedS: number
  /** Worked time and waits. */
  readonly elapsedS: number
  /** Worked time of one unit made alone (its own share of set-up in full). */
  readonly unit: { readonly setUpS: number; readonly runS: number; readonly workedS: number; readonly elapsedS: number }
}
