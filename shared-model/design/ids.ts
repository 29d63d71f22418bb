/** The next free id with this prefix: `c1`, `c2` … Ids are made from what is there, never by chance. */
export const nextId = (prefix: string, taken: readonly { readonly id: string }[]): string => {
  const ids = new Set(taken.map((each) => each.id))
  let serial = taken.length + 1
  while (ids.has(`${prefix}${serial}`)) serial += 1
  return `${prefix}${serial}`
}

/** The list with `item` in it: unchanged when an item of that id is there already. */
export const withItem = <T extends { readonly id: string }>(list: readonly T[], item: T): readonly T[] =>
  list.some((each) => each.id === item.id) ? list : [...list, item]

/** The list with the item of that id changed; the others keep their identity. */
export const changed = <T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  change: (item: T) => T
): readonly T[] => list.map((each) => (each.id === id ? change(each) : each))
