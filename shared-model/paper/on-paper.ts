import type { Cell, Column, TableBlock } from '../sheet'

/** A gap between rows that stand side by side, in mm. */
const BETWEEN: Column = { head: '', align: 'centre', widthMm: 'rest' }
const NOTHING: Cell = { text: '' }

/** A table as it stands on paper: without the columns of its file, and with so many rows abreast as it asks for. */
export const onPaper = ({ abreast: asked, ...table }: TableBlock): TableBlock => {
  const kept = table.columns.flatMap((column, index) => (column.fileOnly === true ? [] : [{ column, index }]))
  const columns = kept.map(({ column }) => column)
  const rows = table.rows.map((row) => kept.map(({ index }) => row[index] ?? NOTHING))
  const abreast = Math.min(asked ?? 1, rows.length)
  if (abreast <= 1) return { ...table, columns, rows }
  const groups: Cell[][] = []
  for (let from = 0; from < rows.length; from += abreast) {
    groups.push(
      Array.from({ length: abreast }, (_, beside) => {
        const row = rows[from + beside] ?? columns.map(() => NOTHING)
        return beside === 0 ? row : [NOTHING, ...row]
      }).flat()
    )
  }
  return {
    ...table,
    columns: Array.from({ length: abreast }, (_, beside) => (beside === 0 ? columns : [BETWEEN, ...columns])).flat(),
    rows: groups
  }
}
