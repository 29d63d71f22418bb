import type { Shows } from '../../../../shared-model/design'
import { failed, ok } from '../../../../shared-model/outcome'
import { inchesFromMm, mm, parseLength } from '../../../../shared-model/units'
import { problemText } from '../../../plan/wording'
import { numberText } from './price-cells'
import type { RowColumn, RowsFor } from './row-table'

interface LengthOf<T> {
  readonly of: (item: T) => number
  readonly put: (item: T, lengthMm: number) => T
}

/** A length in the shop's units, or in those its head names. */
export const lengthCell = <T>(
  name: string,
  { shows }: Pick<RowsFor, 'shows'>,
  { of, put }: LengthOf<T>
): RowColumn<T> => ({
  head: `${name} (${shows.units})`,
  also: ['', ' (in)', ' (mm)'].map((unit) => `${name.toLowerCase()}${unit}`),
  needed: true,
  read: (cell, item, head) => {
    // A length that stands as it was written stays exact.
    if (cell === lengthText(of(item), shows)) return ok(item)
    const shown = /\(mm\)/i.test(head) ? 'mm' : /\(in\)/i.test(head) ? 'in' : shows.units
    const read = parseLength(cell, { shown, decimalMark: shows.decimalMark })
    return read.ok ? ok(put(item, read.value)) : failed(problemText(read.problem, shows))
  },
  write: (item) => lengthText(of(item), shows)
})

/** A plain number in the shop's units, so that a spreadsheet can reckon with it. */
const lengthText = (lengthMm: number, shows: Shows): string =>
  numberText(shows.units === 'mm' ? lengthMm : inchesFromMm(mm(lengthMm)), { shows })
