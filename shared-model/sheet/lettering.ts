/**
 * Width of a line of text, near enough to keep labels apart: the mean advance of the sheet's condensed face is about
 * 0.53 em for letters and 0.57 em for figures (measured on its hmtx table); bold is a tenth wider.
 */
export const textWidthMm = (words: string, sizePt: number, bold = false): number =>
  words.length * 0.56 * (bold ? 1.1 : 1) * sizePt * (25.4 / 72)

/** Height of a capital above its baseline: 0.73 em in the sheet's face. */
export const capHeightMm = (sizePt: number): number => 0.73 * sizePt * (25.4 / 72)

/** A line of text that fits the room: whole, or cut with an ellipsis. */
export const fittedText = (words: string, roomMm: number, sizePt: number, bold = false): string => {
  const width = textWidthMm(words, sizePt, bold)
  if (width <= roomMm + 0.01) return words
  const letters = Math.floor((words.length * roomMm) / width) - 1
  return `${words.slice(0, Math.max(1, letters)).trimEnd()}…`
}
