/** Signs that turn the way of writing for what follows: embeddings, overrides and isolates (Unicode Standard Annex 9, 2). */
const TURNS = /[\u202A-\u202E\u2066-\u2069]/g

/**
 * Words in which no sign turns the order of what stands beside them: a name can carry one that shows `12 mm` as `mm 21`.
 * Each is shown as U+FFFD, the sign for one that could not be shown, so that nothing of the text is gone unseen.
 */
export const plainOrder = (words: string): string => words.replace(TURNS, '\uFFFD')

/** The same in every text of a value; what holds none is given back itself. */
export const plainOrderIn = <T>(value: T): T => {
  if (typeof value === 'string') return plainOrder(value) as T & string
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value)
  const plain = entries.map(([key, each]) => [key, plainOrderIn(each)] as const)
  if (plain.every(([, each], at) => each === entries[at]?.[1])) return value
  return (Array.isArray(value) ? plain.map(([, each]) => each) : Object.fromEntries(plain)) as T
}
