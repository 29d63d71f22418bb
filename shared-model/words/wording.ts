import type { Say } from './say'

/** What is the matter, in a few words, and what to do about it (empty where nothing needs doing). */
export interface Words {
  readonly headline: string
  readonly todo: string
}

/** Words for every code of a room; a code without words does not compile. */
export type Wording<Codes> = { readonly [C in keyof Codes]: (figures: Codes[C], say: Say) => Words }

export const put = (headline: string, todo = ''): Words => ({ headline, todo })

/** `one site`, `3 sites`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 1 ? `one ${one}` : `${count} ${many}`

/** Material and other ids as words: `eva-foam` → `eva foam`. */
export const spaced = (id: string): string => id.replaceAll('-', ' ').replaceAll('_', ' ')
