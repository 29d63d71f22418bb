import { type Cell, type SheetData, type TableBlock, TICK } from '../sheet'

export interface CsvTable {
  readonly name: string
  readonly text: string
}

/**
 * Every table of the sheet as comma-separated text (RFC 4180: CRLF, quotes doubled). A column with exact figures gets a
 * second column with them as plain numbers, and its unit in the head; a column of boxes to tick by hand is left out. Text that a spreadsheet could take for a formula
 * is guarded with an apostrophe (OWASP, CSV Injection); numbers stay numbers.
 *
 * @source rfc-4180
 * @source owasp-csv-injection
 */
export const csvTables = (sheet: SheetData): readonly CsvTable[] => {
  const tables = sheet.sections
    .flatMap((section) => section.blocks)
    .filter((block): block is TableBlock => block.kind === 'table' && block.name !== '')
  const seen = new Map<string, number>()
  return tables.map((table) => {
    const count = (seen.get(table.name) ?? 0) + 1
    seen.set(table.name, count)
    return { name: count === 1 ? table.name : `${table.name}-${count}`, text: csvText(table) }
  })
}

const csvText = (table: TableBlock): string => {
  const columns = [...table.columns.entries()].filter(
    ([index, { head }]) => head !== TICK.text || !table.rows.every((row) => row[index]?.text === TICK.text)
  )
  const heads = columns.flatMap(([, column]) =>
    column.exactUnit === undefined
      ? [textCell(column.head)]
      : [textCell(column.head), textCell(`${column.head} (${column.exactUnit})`)]
  )
  const rows = table.rows.map((row) =>
    columns.flatMap(([index, column]) => {
      const cell = row[index]
      return column.exactUnit === undefined ? [textCell(lineOf(cell))] : [textCell(lineOf(cell)), number(cell?.exact)]
    })
  )
  return [heads, ...rows].map((fields) => `${fields.join(',')}\r\n`).join('')
}

const lineOf = (cell: Cell | undefined): string => {
  if (cell === undefined || cell.text === TICK.text) return ''
  return [cell.lead ?? '', cell.text, cell.under ?? ''].filter((words) => words !== '').join(' ')
}

const number = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(6))))

/** A leading sign, of full width too, or command character; one that has a guard already, so that taking one off gives it back. */
const COULD_RUN = /^'*\s*[=+\-@\t\r\n|＝＋－＠]/
const PLAIN_NUMBER = /^-?\d+(\.\d+)?$/

/** One cell of comma-separated text: guarded against formulas, quoted where it must be. */
export const textCell = (words: string): string => {
  const guarded = COULD_RUN.test(words) && !PLAIN_NUMBER.test(words) ? `'${words}` : words
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim() ? `"${guarded.replace(/"/g, '""')}"` : guarded
}
