interface Numbered {
  readonly number: number
  readonly window: { isFocused(): boolean }
}

/** The lowest number from 1 that no window has taken. */
export function lowestFree(taken: ReadonlySet<number>): number {
  for (let number = 1; ; number += 1) if (!taken.has(number)) return number
}

/** The window with a number, else the one in front, else the first opened; null where there is none. */
export function windowFor<W extends Numbered>(windows: Iterable<W>, number: number | null): W | null {
  const all = [...windows]
  const wanted = number === null ? undefined : all.find((each) => each.number === number)
  return wanted ?? all.find(({ window }) => window.isFocused()) ?? all[0] ?? null
}
