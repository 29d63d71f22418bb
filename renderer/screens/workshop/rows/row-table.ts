import type { Edited, Shows, Workshop } from '../../../../shared-model/design'
import type { Result } from '../../../../shared-model/outcome'

/** How the shop writes its figures, and what day it is. */
export interface RowsFor {
  readonly shows: Shows
  readonly currency: string
  /** ISO date. */
  readonly today: string
}

/** One column of a table that goes to and comes from a spreadsheet. */
export interface RowColumn<T> {
  readonly head: string
  /** Other heads it is known by, in small letters. */
  readonly also?: readonly string[]
  /** A new row must have it. */
  readonly needed?: boolean
  /** The item with the cell's figure; `head` as it stands in the file. */
  readonly read: (cell: string, item: T, head: string) => Result<T, string>
  readonly write: (item: T) => string
}

/** A list of the workshop that is exchanged row by row; an item goes by its id. */
export interface RowTable<T extends { readonly id: string }> {
  readonly name: string
  readonly items: readonly T[]
  readonly blank: T
  /** In the order of the screen. */
  readonly columns: readonly RowColumn<T>[]
  /** Columns that are known by their head only. */
  readonly more?: readonly RowColumn<T>[]
  /** The item when all its cells are read, or what is still missing. */
  readonly whole?: (item: T) => Result<T, string>
  /** Adds the item, or puts it in the place of the one with its id. */
  readonly put: (workshop: Workshop, item: T) => Edited<Workshop>
}
