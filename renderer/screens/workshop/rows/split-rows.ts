/** Cells by row, as a spreadsheet hands them over or a CSV file holds them, and how many rows were only blank. */
export type Rows = readonly (readonly string[])[]

/**
 * Splits pasted or imported text into cells: tabs where there are any, else semicolons where the first row has them outside
 * quotes, else commas; quotes doubled inside quotes (RFC 4180). A guard that was put before a formula is taken off again.
 * null: a quote is never closed.
 */
export function splitRows(text: string): Rows | null {
  const bare = text.replace(/^\uFEFF/, '')
  const mark = separatorOf(bare)
  const rows: string[][] = [[]]
  let cell = ''
  let quoted = false
  const endCell = (): void => {
    rows.at(-1)?.push(unguarded(cell.trim()))
    cell = ''
  }
  for (let at = 0; at < bare.length; at += 1) {
    const letter = bare[at] ?? ''
    if (quoted) {
      if (letter !== '"') cell += letter
      else if (bare[at + 1] === '"') {
        cell += '"'
        at += 1
      } else quoted = false
    } else if (letter === '"' && cell.trim() === '') {
      quoted = true
      cell = ''
    } else if (letter === mark) endCell()
    else if (letter === '\n') {
      endCell()
      rows.push([])
    } else if (letter !== '\r') cell += letter
  }
  if (quoted) return null
  endCell()
  return rows.filter((row) => row.some((each) => each !== ''))
}

const separatorOf = (text: string): string => {
  const firstRow = (text.split(/\r?\n/).find((line) => line.trim() !== '') ?? '').replace(/"[^"]*"/g, '')
  if (firstRow.includes('\t')) return '\t'
  return firstRow.includes(';') ? ';' : ','
}

const unguarded = (cell: string): string => (/^'\s*[=+\-@|]/.test(cell) ? cell.slice(1) : cell)
