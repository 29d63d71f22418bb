import { wordWidthEm } from './word-width'

/** Hebrew, Arabic and the scripts written like them, with their presentation forms (Unicode Standard Annex 9, classes R and AL). */
const LETTERS = '[\\u0590-\\u08FF\\uFB1D-\\uFDFF\\uFE70-\\uFEFC]+'
const WORDS = new RegExp(`${LETTERS}(?: ${LETTERS})+`, 'gu')
/** Wider than this, in em, words must be free to part at the end of a line. */
const WIDEST_EM = 20

/** The PDF writer turns one run at a time: words joined by spaces that do not break are one run, so that the first stands rightmost. */
export const oneRun = (words: string): string =>
  words.replace(WORDS, (run) => (wordWidthEm(run) <= WIDEST_EM ? run.replaceAll(' ', '\u00a0') : run))

/** The same in a drawing, where each space parts a run: the words as elements of their own, from left to right. */
export const runsFromLeft = (words: string): string =>
  words.replace(WORDS, (run) =>
    run
      .split(' ')
      .reverse()
      .map((word) => `<tspan>${word}</tspan>`)
      .join('<tspan> </tspan>')
  )
