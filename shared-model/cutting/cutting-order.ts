/**
 * The order to cut bars and pieces in, so that the stop is set seldom: a bar that has a piece of the length the stop stands
 * at comes next, and that piece is cut first. Best effort.
 */
export interface Arranged<T> {
  readonly bar: T
  /** Lengths in the order to cut. */
  readonly order: readonly number[]
}

/** `lengthsOf` gives the lengths still to be cut from a bar; bars come in the order given when none fits better. */
export const cuttingOrder = <T>(bars: readonly T[], lengthsOf: (bar: T) => readonly number[]): Arranged<T>[] => {
  const left = bars.map((bar) => ({ bar, lengths: [...lengthsOf(bar)].sort((a, b) => b - a) }))
  const arranged: Arranged<T>[] = []
  let stop: number | null = null
  let last = ''
  while (left.length > 0) {
    const same = left.findIndex(({ lengths }) => `${lengths}` === last)
    const fitting = left.findIndex(({ lengths }) => stop !== null && lengths.includes(stop))
    const [next] = left.splice(same >= 0 ? same : Math.max(0, fitting), 1)
    if (!next) break
    const order = stopFirst(next.lengths, stop)
    arranged.push({ bar: next.bar, order })
    stop = order.at(-1) ?? stop
    last = `${next.lengths}`
  }
  return arranged
}

const stopFirst = (lengths: readonly number[], stop: number | null): readonly number[] =>
  stop === null || !lengths.includes(stop)
    ? lengths
    : [...lengths.filter((each) => each === stop), ...lengths.filter((each) => each !== stop)]
