import type { Cell, SheetData, TableBlock } from '../sheet'

export interface CsvTable {
  readonly name: string
  readonly text: string
}

/**
 * Every table of the sheet as comma-separated text (RFC 4180: CRLF, quotes doubled). A column with exact figures gets a
 * second column with them as plain numbers, and its unit in the head. Text that a spreadsheet could take for a formula
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
  const heads = table.columns.flatMap((column) =>
    column.exactUnit === undefined
      ? [textCell(column.head)]
      : [textCell(column.head), textCell(`${column.head} (${column.exactUnit})`)]
  )
  const rows = table.rows.map((row) =>
    table.columns.flatMap((column, index) => {
      const cell = row[index]
      return column.exactUnit === undefined ? [textCell(lineOf(cell))] : [textCell(lineOf(cell)), number(cell?.exact)]
    })
  )
  return [heads, ...rows].map((fields) => `${fields.join(',')}\r\n`).join('')
}

const lineOf = (cell: Cell | undefined): string => {
  if (cell === undefined || cell.text === '☐') return ''
  return cell.under === undefined || cell.under === '' ? cell.text : `${cell.text} ${cell.under}`
}

const number = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(6))))

/** A leading sign or command character, or one after a separator that some programs split at. */
const COULD_RUN = /^[\s]*[=+\-@\t\r\n|]/
const PLAIN_NUMBER = /^-?\d+(\.\d+)?$/

/** One cell of comma-separated text: guarded against formulas, quoted where it must be. */
export const textCell = (words: string): string => {
  const guarded = COULD_RUN.test(words) && !PLAIN_NUMBER.test(words) ? `'${words}` : words
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim() ? `"${guarded.replace(/"/g, '""')}"` : guarded
}
