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
}

export interface BenchPlan {
  readonly steps: readonly BenchStep[]
  readonly holes: readonly DrillRow[]
  readonly toolChanges: number
  readonly leastToolChanges: number
  readonly proven: boolean
  readonly setUpS: number
  readonly runS: number
  /** Worked time of the batch. */
  readonly workedS: number
  /** Worked time and waits. */
  readonly elapsedS: number
}
