/**
 * Fillings of a bar by rising length, each worth more than any shorter one. Lists are typed arrays that grow and are used
 * again: a table is worked out some thousand times in a search.
 */
export interface Fillings {
  length: number
  weight: Float64Array
  worth: Float64Array
  /** Number of the filling among all that were made; 0: the empty one. */
  node: Int32Array
  /** For every filling made, the one it grew from, and by which step. */
  made: number
  parent: Int32Array
  step: Int32Array
  /** The next list is written here. */
  spare: { weight: Float64Array; worth: Float64Array; node: Int32Array }
}

/** What a filling must be worth at least to be kept, by the bars that it still fits into, shortest first. */
export interface Bars {
  readonly bars: readonly { readonly capacity: number }[]
  readonly atLeast: Float64Array
}

const lists = (room: number): Fillings['spare'] => ({
  weight: new Float64Array(room),
  worth: new Float64Array(room),
  node: new Int32Array(room)
})

export const newFillings = (): Fillings => ({
  ...lists(256),
  length: 0,
  made: 0,
  parent: new Int32Array(1024),
  step: new Int32Array(1024),
  spare: lists(256)
})

/** The empty filling alone. */
export const openFillings = (list: Fillings): void => {
  list.length = 1
  list.made = 1
  list.weight[0] = 0
  list.worth[0] = 0
  list.node[0] = 0
}

/** The fillings with and without some pieces more; of two, one that is no shorter and worth no more is left out. */
export const withMore = (
  list: Fillings,
  step: number,
  size: number,
  gain: number,
  { bars, atLeast }: Bars,
  restRate: number
): void => {
  makeRoom(list)
  const { weight, worth, node, length, parent, step: stepOf, spare } = list
  const { weight: toWeight, worth: toWorth, node: toNode } = spare
  const top = bars.at(-1)?.capacity ?? 0
  let { made } = list
  let kept = 0
  let most = Number.NEGATIVE_INFINITY
  let old = 0
  let next = 0
  let bar = 0
  let end = bars[0]?.capacity ?? 0
  let least = atLeast[0] ?? 0
  while (next < length) {
    const oldWeight = old < length ? (weight[old] as number) : Number.POSITIVE_INFINITY
    const nextWeight = (weight[next] as number) + size
    const takesOld = oldWeight <= nextWeight
    const here = takesOld ? oldWeight : nextWeight
    if (here > top) break
    const value = takesOld ? (worth[old] as number) : (worth[next] as number) + gain
    if (value > most) {
      while (here > end) {
        bar++
        end = bars[bar]?.capacity ?? Number.POSITIVE_INFINITY
        least = atLeast[bar] as number
      }
      if (value - here * restRate >= least) {
        most = value
        // Of two as long the more valuable stays.
        if (kept > 0 && toWeight[kept - 1] === here) kept--
        toWeight[kept] = here
        toWorth[kept] = value
        if (takesOld) toNode[kept] = node[old] as number
        else {
          parent[made] = node[next] as number
          stepOf[made] = step
          toNode[kept] = made
          made++
        }
        kept++
      }
    }
    if (takesOld) old++
    else next++
  }
  list.spare = { weight, worth, node }
  list.weight = toWeight
  list.worth = toWorth
  list.node = toNode
  list.length = kept
  list.made = made
}

const makeRoom = (list: Fillings): void => {
  const { length, spare, made } = list
  if (spare.weight.length < 2 * length) list.spare = lists(4 * length)
  if (list.parent.length >= made + length) return
  list.parent = longer(list.parent, 2 * (made + length))
  list.step = longer(list.step, 2 * (made + length))
}

const longer = (list: Int32Array, room: number): Int32Array => {
  const more = new Int32Array(room)
  more.set(list)
  return more
}
