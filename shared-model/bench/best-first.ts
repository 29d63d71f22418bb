import type { Budget } from '../outcome'

/** A search for the cheapest way from a start to an end. Costs are not negative; `bound` never exceeds what is left. */
export interface Ways<State> {
  readonly starts: readonly State[]
  readonly key: (state: State) => string
  readonly bound: (state: State) => number
  readonly isEnd: (state: State) => boolean
  readonly next: (state: State) => readonly { readonly state: State; readonly cost: number }[]
}

export interface Best<State> {
  /** States from a start to an end; null when the budget ran out or there is no end. */
  readonly way: readonly State[] | null
  readonly cost: number
  /** Nothing can be cheaper than this. */
  readonly lowerBound: number
  readonly expanded: number
}

interface Node<State> {
  readonly state: State
  readonly cost: number
  readonly least: number
  readonly from: Node<State> | null
}

/**
 * Best-first search (A*): always goes on from the state whose cost so far plus bound is least, the deeper one of equals,
 * so the first end reached is cheapest. One unit of work is one state gone on from. Out of budget it still returns the
 * least such sum among the states left: a proven lower bound.
 */
export const bestFirst = <State>(ways: Ways<State>, budget: Budget): Best<State> => {
  const heap: Node<State>[] = []
  const reached = new Map<string, number>()
  for (const state of ways.starts) push(heap, { state, cost: 0, least: ways.bound(state), from: null })
  let expanded = 0
  let lowerBound = 0
  for (let node = pop(heap); node; node = pop(heap)) {
    lowerBound = Math.max(lowerBound, node.least)
    if (ways.isEnd(node.state)) return { way: wayTo(node), cost: node.cost, lowerBound: node.cost, expanded }
    const key = ways.key(node.state)
    if ((reached.get(key) ?? Number.POSITIVE_INFINITY) < node.cost) continue
    if (expanded >= budget.work || budget.stop())
      return { way: null, cost: Number.POSITIVE_INFINITY, lowerBound, expanded }
    expanded += 1
    for (const { state, cost } of ways.next(node.state)) {
      const total = node.cost + cost
      const nextKey = ways.key(state)
      if ((reached.get(nextKey) ?? Number.POSITIVE_INFINITY) <= total) continue
      reached.set(nextKey, total)
      push(heap, { state, cost: total, least: Math.max(node.least, total + ways.bound(state)), from: node })
    }
  }
  return { way: null, cost: Number.POSITIVE_INFINITY, lowerBound: Number.POSITIVE_INFINITY, expanded }
}

const wayTo = <State>(end: Node<State>): State[] => {
  const way: State[] = []
  for (let node: Node<State> | null = end; node; node = node.from) way.push(node.state)
  return way.reverse()
}

const before = <State>(a: Node<State>, b: Node<State>): boolean =>
  a.least < b.least || (a.least === b.least && a.cost > b.cost)

const push = <State>(heap: Node<State>[], node: Node<State>): void => {
  let at = heap.length
  heap.push(node)
  while (at > 0) {
    const parent = (at - 1) >> 1
    const above = heap[parent] as Node<State>
    if (!before(node, above)) break
    heap[at] = above
    at = parent
  }
  heap[at] = node
}

const pop = <State>(heap: Node<State>[]): Node<State> | undefined => {
  const top = heap[0]
  const last = heap.pop()
  if (!last || heap.length === 0) return top
  let at = 0
  for (;;) {
    let child = 2 * at + 1
    if (child >= heap.length) break
    if (child + 1 < heap.length && before(heap[child + 1] as Node<State>, heap[child] as Node<State>)) child += 1
    if (!before(heap[child] as Node<State>, last)) break
    heap[at] = heap[child] as Node<State>
    at = child
  }
  heap[at] = last
  return top
}
