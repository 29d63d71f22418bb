import { unbroken } from './unbroken'

/**
 * Advance widths of the sheet's condensed face in thousandths of an em, from the space (U+0020) to the tilde (U+007E), read
 * from its hmtx table; test/paper/text-lines.test.ts reads them again.
 */
const ADVANCES =
  '286 360 414 754 572 855 702 247 351 351 450 754 286 325 286 303 572 572 572 572 572 572 572 572 572 572 303 303 754 754 754 478 ' +
  '900 615 617 628 693 568 518 697 677 265 265 590 501 776 673 708 542 708 625 571 549 659 615 890 616 549 616 351 303 351 754 450 ' +
  '450 551 571 495 571 554 316 571 570 250 250 521 250 876 570 550 571 571 370 469 353 570 532 736 532 532 472 572 303 572 754'
const WIDTHS = ADVANCES.split(' ').map(Number)
const FIRST = 0x20
/** Words in the bold face are about a tenth wider; single signs differ more. */
const BOLD = 1.15
/** The widest Latin letter with a mark of its own, Œ or Æ, is about this wide; any other sign is taken for an em. */
const ACCENTED = 970
const EM = 1000

const MM_A_PT = 25.4 / 72
/** Kerning moves letters a little: lines are filled to this share. */
const FILLED_SHARE = 0.985

/** Words as the lines that the sheet's face makes of them in a width in mm, broken at spaces and where a run may be parted. */
export const textLines = (words: string, widthMm: number, sizePt: number, bold = false): readonly string[] => {
  const mostEm = (FILLED_SHARE * widthMm) / (sizePt * MM_A_PT)
  return words.split('\n').flatMap((paragraph) => {
    const lines: string[] = []
    let line = ''
    for (const part of unbroken(paragraph).split(BREAKS)) {
      if (line !== '' && lineWidthEm(line + part.trimEnd(), bold) > mostEm) {
        lines.push(line)
        line = ''
      }
      line += part
    }
    return [...lines, line]
  })
}

/** After a space, and at a place that has no width. */
const BREAKS = /(?<= )|(?<=\u200b)/

/** Width of words in em, to a thousandth for signs of ASCII. */
export const lineWidthEm = (words: string, bold = false): number => {
  let width = 0
  for (const sign of words) {
    const code = sign.codePointAt(0) ?? 0
    if (code === 0x200b) continue
    width += code === 0xa0 ? (WIDTHS[0] ?? EM) : (WIDTHS[code - FIRST] ?? (code < 0x250 ? ACCENTED : EM))
  }
  return (width / 1000) * (bold ? BOLD : 1)
}
