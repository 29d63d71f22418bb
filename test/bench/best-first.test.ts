import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { bestFirst } from '../../shared-model/bench/best-first'

interface Precedence {
  readonly name: string
  readonly n: number
  readonly matrix: readonly (readonly number[])[]
  readonly optimum: number
}

const REFERENCE: { readonly precedence: readonly Precedence[] } = JSON.parse(
  readFileSync(new URL('../reference/bench-cases.json', import.meta.url), 'utf8')
)

const NEVER = () => false

interface State {
  readonly visited: number
  readonly last: number
}

/** −1 in row i, column j: j comes before i. From city 0 through all. */
const orderOf = ({ n, matrix }: Precedence, work: number) => {
  const at = (i: number, j: number) => matrix[i]?.[j] ?? 0
  const cities = Array.from({ length: n }, (_, i) => i)
  const comesIn = (j: number) => Math.min(...cities.filter((i) => i !== j && at(i, j) >= 0).map((i) => at(i, j)))
  return bestFirst<State>(
    {
      starts: [{ visited: 1, last: 0 }],
      key: ({ visited, last }) => `${visited} ${last}`,
      bound: ({ visited }) => cities.filter((j) => !(visited & (1 << j))).reduce((sum, j) => sum + comesIn(j), 0),
      isEnd: ({ visited }) => visited === (1 << n) - 1,
      next: ({ visited, last }) =>
        cities
          .filter((j) => !(visited & (1 << j)) && at(last, j) >= 0)
          .filter((j) => cities.every((k) => k === j || at(j, k) >= 0 || visited & (1 << k)))
          .map((j) => ({ state: { visited: visited | (1 << j), last: j }, cost: at(last, j) }))
    },
    { work, stop: NEVER }
  )
}

describe('the search for the cheapest order', () => {
  it.each(REFERENCE.precedence)('TSPLIB sequential ordering instance $name: optimum $optimum', (instance) => {
    const best = orderOf(instance, 100_000)
    expect(best.cost).toBe(instance.optimum)
    expect(best.lowerBound).toBe(instance.optimum)
    expect(best.way).toHaveLength(instance.n)
  })

  it('gives a bound that holds when it runs out of work', () => {
    for (const instance of REFERENCE.precedence) {
      const cut = orderOf(instance, 3)
      expect(cut.way).toBeNull()
      expect(cut.lowerBound).toBeLessThanOrEqual(instance.optimum)
    }
  })
})
