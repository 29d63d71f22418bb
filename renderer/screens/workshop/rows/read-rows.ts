import type { Workshop } from '../../../../shared-model/design'
import { failed, ok, type Result } from '../../../../shared-model/outcome'
import { problemText } from '../../../plan/wording'
import type { RowColumn, RowsFor, RowTable } from './row-table'
import { splitRows } from './split-rows'

/** What rows did to the workshop. */
export interface RowsTaken {
  readonly workshop: Workshop
  readonly added: number
  readonly changed: number
}

const ID = 'id'
const MOST_ROWS = 1000

/** The cell that pasted cells start at, as on the screen. */
export interface StartCell {
  readonly row: number
  readonly column: number
}

/**
 * Takes rows into a list of the workshop: a row whose id is there changes that item, any other is added, and nothing is ever
 * taken away. Without a row of heads the columns stand as on the screen. All or nothing: else every error, by row and column.
 *
 * @param from where cells are pasted: they go over those from there on, rows past the last are added; a row of heads goes by them
 */
export function readRows<T extends { readonly id: string }>(
  text: string,
  table: RowTable<T>,
  workshop: Workshop,
  { shows }: Pick<RowsFor, 'shows'>,
  from?: StartCell
): Result<RowsTaken, readonly string[]> {
  const rows = splitRows(text, from !== undefined)
  if (rows === null) return failed(['A quotation mark is opened and never closed.'])
  const firstAt = rows.findIndex((row) => row.length > 0)
  const first = rows[firstAt]
  if (first === undefined) return failed(['There are no rows.'])
  if (rows.length > MOST_ROWS) return failed([`At most ${MOST_ROWS} rows at once; these are ${rows.length}.`])
  const headed =
    first.filter((head) => isId(head) || columnOf(table, head) !== undefined).length >= Math.min(2, first.length)
  const heads = headed ? first : table.columns.slice(from?.column ?? 0).map(({ head }) => head)
  const errors = heads.flatMap((head, at) =>
    head === '' || isId(head) || columnOf(table, head) !== undefined
      ? []
      : [`Row ${firstAt + 1}, column ${at + 1}: there is no column “${head.slice(0, 40)}” here.`]
  )
  const body = rows
    .map((cells, at) => ({ cells, serial: at + 1 }))
    .slice(headed ? firstAt + 1 : firstAt)
    .filter(({ cells }) => cells.length > 0)
  if (body.length === 0) errors.push('There is a row of heads and nothing below it.')
  let made = workshop
  let changed = 0
  const rowOf = new Map<string, number>()
  for (const { cells, serial } of body) {
    const under = headed || from === undefined ? undefined : table.items[from.row + serial - 1]
    const read = readRow(cells, heads, table, under)
    if (!read.ok) {
      errors.push(...read.problem.map((why) => `Row ${serial}, ${why}`))
      continue
    }
    const known = table.items.some(({ id }) => id === read.value.id)
    const before = rowOf.get(read.value.id)
    if (known && before !== undefined) errors.push(`Row ${serial}, Id: ${read.value.id} stands in row ${before} too.`)
    rowOf.set(read.value.id, serial)
    const put = table.put(made, read.value)
    if (put.ok) made = put.value
    else errors.push(`Row ${serial}: ${problemText(put.problem, shows)}`)
    if (known) changed += 1
  }
  return errors.length > 0 ? failed(errors) : ok({ workshop: made, changed, added: body.length - changed })
}

function readRow<T extends { readonly id: string }>(
  row: readonly string[],
  heads: readonly string[],
  table: RowTable<T>,
  under: T | undefined
): Result<T, readonly string[]> {
  const idAt = heads.findIndex(isId)
  const known = under ?? table.items.find(({ id }) => id === row[idAt])
  const errors: string[] = []
  let item = known ?? table.blank
  const told = new Set<RowColumn<T>>()
  for (const [at, cell] of row.entries()) {
    const head = heads[at]
    const column = head === undefined ? undefined : columnOf(table, head)
    if (head === undefined && cell !== '') errors.push(`column ${at + 1}: “${cell.slice(0, 40)}” is in no column.`)
    if (head === undefined || column === undefined) continue
    if (cell === '' && column.needed === true) continue
    told.add(column)
    const read = column.read(cell, item, head)
    if (read.ok) item = read.value
    else errors.push(`${column.head}: ${read.problem}`)
  }
  if (known === undefined) {
    for (const column of table.columns)
      if (column.needed === true && !told.has(column)) errors.push(`${column.head}: it is needed.`)
  }
  if (errors.length > 0) return failed(errors)
  const whole = table.whole?.(item) ?? ok(item)
  return whole.ok ? whole : failed([whole.problem])
}

const isId = (head: string): boolean => head.trim().toLowerCase() === ID

const columnOf = <T extends { readonly id: string }>(table: RowTable<T>, head: string): RowColumn<T> | undefined => {
  const plain = head.trim().toLowerCase()
  return [...table.columns, ...(table.more ?? [])].find(
    (column) => column.head.toLowerCase() === plain || column.also?.includes(plain) === true
  )
}
