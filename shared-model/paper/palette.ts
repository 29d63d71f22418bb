/** The sheet's greys. Nothing is told by a hue, and what a tint tells is also told by a line, a dash or a word. */
export const INK = '#000000'
export const PAPER = '#ffffff'
/** Rules between the rows of a table and around facts. */
export const RULE = '#8a8a8a'
/** Behind the heads of a table. */
export const HEAD_GROUND = '#efefef'
/** Behind a signal word: the grave ones white on black, the others black on this. */
export const SIGNAL_GROUND = '#e4e4e4'

/** Areas of drawings, from light to dark. */
export const FILL_GREYS = { paper: PAPER, pale: '#ebebeb', tint: '#d0d0d0', dark: '#767676', ink: INK } as const
