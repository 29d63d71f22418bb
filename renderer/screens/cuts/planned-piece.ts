import type { BarOf, CutBar } from '../../../shared-model/cutting'

/** A piece on its bar, among the bars of its profile. */
export interface PlannedPiece {
  readonly bar: BarOf
  readonly piece: CutBar['pieces'][number]
  readonly bars: readonly CutBar[]
}
