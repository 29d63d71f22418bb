import { INK } from './palette'
import type { PdfStyle } from './pdf-node'

/** One scale of sizes: 9 for tables, 10 for text, then about 1.2 and 1.7 times. Black on white. */
export const BODY: PdfStyle & { font: string } = { font: 'DejaVu', fontSize: 10, lineHeight: 1.12, color: INK }

export const styles = (): Record<string, PdfStyle> => ({
  section: { fontSize: 17, bold: true },
  subheading: { fontSize: 11.5, bold: true },
  tableHead: { bold: true },
  table: { fontSize: 9 },
  note: { fontSize: 9 },
  frame: { fontSize: 9 },
  factName: { fontSize: 9 },
  factValue: { fontSize: 11, bold: true },
  big: { fontSize: 20, bold: true },
  signal: { fontSize: 12, bold: true },
  fieldName: { fontSize: 7.5 },
  fieldValue: { fontSize: 10 },
  title: { fontSize: 15, bold: true }
})
