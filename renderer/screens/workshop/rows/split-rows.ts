/** Cells by row, as a spreadsheet hands them over or a CSV file holds them; a blank row has none and keeps its place. */
export type Rows = readonly (readonly string[])[]

/**
 * Splits pasted or imported text into cells: tabs where there are any, else semicolons where the first row has them outside
 * quotes, else commas; quotes doubled inside quotes (RFC 4180); a row ends with CR, LF or both. A first line `sep=;` that
 * some spreadsheets write names the mark. A guard that was put before a formula is taken off again.
 * null: a quote is never closed.
 *
 * @param copied as a spreadsheet puts it on the clipboard: always tabs
 */
export function splitRows(text: string, copied = false): Rows | null {
  const whole = text.replace(/^\uFEFF/, '')
  const said = /^sep=([,;\t|])\r?\n?/i.exec(whole)
  // The line that names the mark stays as a blank row, so that rows are counted as the file has them.
  const bare = said === null ? whole : whole.slice(5)
  const mark = copied ? '\t' : (said?.[1] ?? separatorOf(bare))
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
    else if (letter === '\n' || letter === '\r') {
      if (letter === '\r' && bare[at + 1] === '\n') at += 1
      endCell()
      rows.push([])
    } else cell += letter
  }
  if (quoted) return null
  endCell()
  const told = rows.map((row) => (row.some((each) => each !== '') ? row : []))
  while (told.at(-1)?.length === 0) told.pop()
  return told
}

const separatorOf = (text: string): string => {
  const firstRow = (text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '').replace(/"[^"]*"/g, '')
  if (firstRow.includes('\t')) return '\t'
  return firstRow.includes(';') ? ';' : ','
}

const unguarded = (cell: string): string => (/^'+\s*[=+\-@|＝＋－＠]/.test(cell) ? cell.slice(1) : cell)
