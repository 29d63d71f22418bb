import { csvCell } from '../../../../shared-model/paper'
import type { RowsFor, RowTable } from './row-table'

/**
 * A list of the workshop as comma-separated text (RFC 4180), each row with its id so that it finds its place again. Where the
 * shop's decimal mark is a comma the cells are parted by semicolons, as spreadsheets there do. Text that could run as a
 * formula is guarded.
 */
export function writeRows<T extends { readonly id: string }>(
  table: RowTable<T>,
  { shows }: Pick<RowsFor, 'shows'>
): string {
  const mark = shows.decimalMark === ',' ? ';' : ','
  const cell = (words: string): string => {
    const made = csvCell(words)
    return made.includes(mark) && !made.startsWith('"') ? `"${made}"` : made
  }
  const lines = [
    ['Id', ...table.columns.map(({ head }) => head)],
    ...table.items.map((item) => [item.id, ...table.columns.map(({ write }) => write(item))])
  ]
  return lines.map((line) => `${line.map(cell).join(mark)}\r\n`).join('')
}
