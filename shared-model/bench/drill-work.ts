/** One operation on a piece: a tool, and operations of the same piece that come before it (by index). */
export interface DrillOperation {
  readonly tool: number
  readonly after: readonly number[]
}

/** Pieces that are alike: each is clamped and drilled by itself. */
export interface DrillPiece {
  readonly count: number
  readonly operations: readonly DrillOperation[]
  /** Operations of other pieces that must be done on all of these before the first operation here (a core's parents). */
  readonly waitsFor: readonly { readonly piece: number; readonly operation: number }[]
}

/** The drilling of a batch as a pure sequencing problem. Pieces stand in the order of the cut list, parents before cores. */
export interface DrillWork {
  readonly tools: number
  /** Drills at the bench; each keeps its tool until another is fitted. The first tool in each is fitted free. */
  readonly drills: number
  readonly pieces: readonly DrillPiece[]
  readonly changeS: number
  readonly mountS: number
}

/** What is done between one tool change or clamping and the next. */
export interface DrillCell {
  readonly piece: number
  readonly serial: number
  readonly operations: readonly number[]
  /** Drill that each operation is done with. */
  readonly drills: readonly number[]
  /** The piece is clamped for this cell. */
  readonly mounts: boolean
  /** Tools fitted for this cell; `free` for the first tool of a drill. */
  readonly fits: readonly { readonly drill: number; readonly tool: number; readonly free: boolean }[]
}

/** Tools in the drills, one stage after another; a stage differs from the one before by one fitting. */
export type Stages = readonly (readonly number[])[]

/** Operations of one piece that the tools at hand can do now, followed until no more come free; added to `done`. */
export const doable = ({ operations }: DrillPiece, done: number, tools: readonly number[]): number => {
  let mask = done
  for (let before = -1; before !== mask; ) {
    before = mask
    for (let i = 0; i < operations.length; i++) {
      const { tool, after } = operations[i] as DrillOperation
      if (mask & (1 << i) || !tools.includes(tool)) continue
      if (isDone(after, mask)) mask |= 1 << i
    }
  }
  return mask
}

const isDone = (operations: readonly number[], done: number): boolean => {
  for (const operation of operations) if (!(done & (1 << operation))) return false
  return true
}

export const allDone = (piece: DrillPiece): number => (1 << piece.operations.length) - 1
