/** Letters that are written from right to left: the blocks of Hebrew, Arabic and their neighbours (Unicode Standard Annex 9, table 4: R and AL). */
const RIGHT_TO_LEFT = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u

/** First strong isolate and pop directional isolate: what stands between them has its own order and turns nothing beside it. */
const FIRST_STRONG_ISOLATE = '\u2068'
const POP_ISOLATE = '\u2069'

/**
 * A name as it stands inside a sentence: one written from right to left is isolated, so that the figures after it keep
 * their order where a host draws both ways of writing (Unicode Standard Annex 9, 2.4). The PDF writer draws none.
 */
export const setApart = (name: string): string =>
  RIGHT_TO_LEFT.test(name) ? `${FIRST_STRONG_ISOLATE}${name}${POP_ISOLATE}` : name
