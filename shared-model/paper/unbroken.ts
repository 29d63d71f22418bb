import { oneRun } from './right-to-left'
import { piecesOf, wordWidthEm } from './word-width'

const UNITS = 'mm|in|ft|L|mL|US gal|US fl oz|kg|g|lb|oz|h|min|s|d|%|rpm|°C|°F|mS/cm'
const FIGURE_AND_UNIT = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\w/]))`, 'g')
const RUN = /[^\s\u00a0]{12,}/gu
/** A run wider than this, in em, may be wider than a narrow column: it may be parted where it must, in pieces of so many. */
const WIDEST_RUN_EM = 13
const PIECE_EM = 6
const WHOLE_AND_FRACTION = /(\d) (?=\d+\/\d+)/g

/** A figure keeps its unit, and a whole number its fraction, on one line: the space between them does not break. */
export const unbroken = (words: string): string =>
  oneRun(words)
    .replace(FIGURE_AND_UNIT, '$1\u00a0')
    .replace(WHOLE_AND_FRACTION, '$1\u00a0')
    .replace(/Ø (?=\d)/g, 'Ø\u00a0')
    .replace(RUN, (run) => (wordWidthEm(run) <= WIDEST_RUN_EM ? run : piecesOf(run, PIECE_EM).join('\u200b')))
