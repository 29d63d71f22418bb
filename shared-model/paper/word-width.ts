/** Width of words in em, rather too wide than too narrow: the sheet's condensed face by kinds of letter (its hmtx table). */
export const wordWidthEm = (words: string): number => {
  let em = 0
  for (const sign of words) em += signWidthEm(sign)
  return em
}

/** Words cut to a width in em, with a mark that there is more. */
export const withinEm = (words: string, mostEm: number): string => {
  if (wordWidthEm(words) <= mostEm) return words
  let kept = ''
  let em = signWidthEm('W')
  for (const sign of words) {
    em += signWidthEm(sign)
    if (em > mostEm) break
    kept += sign
  }
  return `${kept.trimEnd()}…`
}

/** A run without a space in pieces of at most so many em, no sign divided. */
export const piecesOf = (run: string, mostEm: number): readonly string[] => {
  const pieces: string[] = []
  let piece = ''
  let em = 0
  for (const sign of run) {
    const wide = signWidthEm(sign)
    if (piece !== '' && em + wide > mostEm) {
      pieces.push(piece)
      piece = ''
      em = 0
    }
    piece += sign
    em += wide
  }
  return [...pieces, piece]
}

const signWidthEm = (sign: string): number => {
  if (/[WMmw@%—]|[^\u0020-\u024F\u2010-\u2027]/.test(sign)) return 1
  return /[A-Z]/.test(sign) ? 0.72 : 0.56
}
