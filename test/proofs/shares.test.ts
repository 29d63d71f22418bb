import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { SHARED_PROOFS, sharesOf } from './shares'
import { added, NONE } from './tally'

const root = fileURLToPath(new URL('../..', import.meta.url))

test('the shares of a proof are all of it, each with a seed of its own, whoever does which', () => {
  for (const proof of Object.values(SHARED_PROOFS)) {
    const shares = sharesOf(proof, 20_261_125, proof.full)
    expect(shares.reduce((sum, { runs }) => sum + runs, 0)).toBe(proof.full)
    expect(new Set(shares.map(({ seed }) => seed)).size).toBe(shares.length)
    expect(sharesOf(proof, 20_261_125, proof.full)).toEqual(shares)
  }
})

test('the full counts are 200,000 spoilt documents and 100,000 random designs', () => {
  const { 'mutated-designs': designs, 'mutated-workshops': workshops, 'random-designs': random } = SHARED_PROOFS
  expect((designs?.full ?? 0) + (workshops?.full ?? 0)).toBe(200_000)
  expect(random?.full).toBe(100_000)
})

test('tallies add up in any order and keep the slowest runs', () => {
  const runs = (seed: number, ...times: readonly number[]) => times.map((ms, k) => ({ run: `seed ${seed}, ${k}`, ms }))
  const [a, b] = [
    { counts: { accepted: 2, refused: 1 }, slowest: runs(1, 7, 5, 3, 1) },
    { counts: { accepted: 3 }, slowest: runs(2, 9, 5, 2, 1) }
  ]
  const both = added(added(NONE, a), b)
  expect(both.counts).toEqual({ accepted: 5, refused: 1 })
  expect(both.slowest.map(({ ms, run }) => `${ms} ${run}`)).toEqual([
    '9 seed 2, 0',
    '7 seed 1, 0',
    '5 seed 1, 1',
    '5 seed 2, 1',
    '3 seed 1, 2',
    '2 seed 2, 2'
  ])
  expect(added(added(NONE, b), a)).toEqual(both)
})

test('every test with a full count of its own is a part of the long proofs', () => {
  const prove = readFileSync(`${root}/test/run/prove.mjs`, 'utf8')
  const tests = readdirSync(`${root}/test`, { recursive: true, encoding: 'utf8' })
    .map((name) => `test/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.test.ts'))
  const counting = tests.filter((name) =>
    /SILLWRIGHT_PROVE ===|SILLWRIGHT_SHARE|\bcounted\(\d/.test(readFileSync(`${root}/${name}`, 'utf8'))
  )
  for (const file of counting.filter((each) => !each.endsWith('shares.test.ts'))) expect(prove).toContain(`'${file}'`)
  expect(counting).toContain('test/proofs/killed-saves.test.ts')
})
