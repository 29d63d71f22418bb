import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CoreCollar, reuseCores } from '../../shared-model/rings'
import { mm } from '../../shared-model/units'

interface Case {
  readonly id: string
  readonly saws: readonly (readonly [number, number])[]
  readonly kerf: number
  readonly web: number
  readonly from_core: number
  readonly from_sheet: number
  readonly saved_sum_D1_sq: number
}

/** Worked by an own program and checked against enumeration of 400 and 500 random cases. */
const REFERENCE: {
  readonly coreReuse: { readonly cases: readonly Case[] }
  readonly coreReuseSameSaw: { readonly cases: readonly Case[] }
} = JSON.parse(readFileSync(new URL('../reference/bench-cases.json', import.meta.url), 'utf8'))

const collarsOf = (saws: Case['saws']): readonly CoreCollar[] =>
  saws.map(([outerMm, innerMm], i) => ({ id: `${i}`, outerMm, innerMm, count: 1 }))

const expectCase = (one: Case, sameSaw: boolean) => {
  const reuse = reuseCores(collarsOf(one.saws), mm(one.kerf), mm(one.web), { sameSaw })
  expect(reuse).toMatchObject({
    fromCore: one.from_core,
    fromSheet: one.from_sheet,
    savedSquareMm: one.saved_sum_D1_sq
  })
  const sources = reuse.uses.map(({ fromId }) => fromId)
  expect(new Set(sources).size).toBe(sources.length)
}

/** The most that any choice of a core or the sheet for every collar saves. */
const bestByForce = (saws: Case['saws'], kerf: number, web: number, sameSaw: boolean): number => {
  const from = (i: number, taken: ReadonlySet<number>): number => {
    const need = saws[i]
    if (!need) return 0
    let best = from(i + 1, taken)
    for (const [j, source] of saws.entries()) {
      if (j === i || taken.has(j)) continue
      const isBlank = sameSaw && source[1] === need[0]
      if (source[1] - 2 * kerf < need[0] + 2 * web && !isBlank) continue
      best = Math.max(best, need[0] ** 2 + from(i + 1, new Set([...taken, j])))
    }
    return best
  }
  return from(0, new Set())
}

describe('collars from the cores of others', () => {
  it.each(REFERENCE.coreReuse.cases)('case $id: cores that hold a saw and its webs', (one) => expectCase(one, false))

  it.each(REFERENCE.coreReuseSameSaw.cases)('case $id: a core of the same saw is the blank', (one) =>
    expectCase(one, true)
  )

  it('saves as much as the best of all choices', () => {
    const outer = fc.constantFrom(102, 89, 76, 64, 51, 38)
    const saws = fc.array(fc.tuple(outer, fc.constantFrom(76, 64, 51, 38, 32, 25, 19)), { minLength: 1, maxLength: 7 })
    fc.assert(
      fc.property(saws, fc.boolean(), (drawn, sameSaw) => {
        const pairs = drawn.filter(([big, small]) => small < big)
        const reuse = reuseCores(collarsOf(pairs), mm(2), mm(3), { sameSaw })
        return reuse.savedSquareMm === bestByForce(pairs, 2, 3, sameSaw)
      }),
      { seed: 7_105, numRuns: 300 }
    )
  })

  it('gives the same for a kind counted as for its collars one by one', () => {
    const kinds: readonly CoreCollar[] = [
      { id: 'a', outerMm: 102, innerMm: 76, count: 3 },
      { id: 'b', outerMm: 76, innerMm: 51, count: 5 },
      { id: 'c', outerMm: 51, innerMm: 25, count: 4 }
    ]
    const single = kinds.flatMap((kind) =>
      Array.from({ length: kind.count }, (_, i) => ({ ...kind, id: `${kind.id}${i}`, count: 1 }))
    )
    const [counted, oneByOne] = [kinds, single].map((all) => reuseCores(all, mm(2), mm(3), { sameSaw: true }))
    // Three cores of 76 are blanks of b, four of the five cores of 51 blanks of c: 3 · 76² + 4 · 51² = 27 732.
    expect(counted?.savedSquareMm).toBe(27_732)
    expect(oneByOne?.savedSquareMm).toBe(27_732)
    expect(counted?.fromCore).toBe(7)
  })

  it('drops no core from a plain disc', () => {
    const disc = { id: 'disc', outerMm: 102, innerMm: null, count: 4 }
    const small = { id: 'small', outerMm: 38, innerMm: 19, count: 4 }
    expect(reuseCores([disc, small], mm(2), mm(3), { sameSaw: true }).fromCore).toBe(0)
  })
})
