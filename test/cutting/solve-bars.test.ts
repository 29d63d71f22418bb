import loadHighs from 'highs'
import { describe, expect, it } from 'vitest'
import { checkCertificate, checkCutPlan, solveBars } from '../../shared-model/cutting'
import { referenceCases } from './reference-cases'

const highs = await loadHighs()
const PLENTY = { work: 100_000_000, stop: () => false }

/** Solves to the proof, checks the plan piece by piece and the bound from its certificate. */
const expectProven = ({ instance, inBars, optimum, name }: ReturnType<typeof referenceCases>[number]) => {
  const solved = solveBars(instance, { budget: PLENTY, highs })
  const check = checkCutPlan(instance, solved.patterns)
  expect(check.faults, name).toEqual([])
  expect(check.cost, name).toBe(solved.cost)
  expect(solved.proven, name).toBe(true)
  expect(solved.lowerBound, name).toBe(solved.cost)
  if (optimum !== null) expect(inBars ? check.bars : check.cost, name).toBe(optimum)
  if (solved.certificate === null) throw new Error(`${name}: no certificate`)
  expect(checkCertificate(instance, solved.certificate).valid, name).toBe(true)
}

describe('bars cut at least cost, proven', () => {
  it('textbook examples, each with its source on its line (the encyclopedia’s 5600 mm paper rolls, Gilmore and Gomory 1961)', () => {
    for (const one of referenceCases('textbook')) expectProven(one)
  })

  it('shortened uniform instances with published optima', () => {
    for (const one of referenceCases('scip-small')) expectProven(one)
  })

  it('hidden plans that use every bar to the last unit: their number of bars is the optimum', () => {
    for (const one of referenceCases('full-bars').filter(({ instance }) => instance.demand.length < 60))
      expectProven(one)
  })

  it('three pieces to a bar with nothing left', () => {
    for (const one of referenceCases('triples').filter(({ instance }) => instance.demand.length < 82)) expectProven(one)
  })

  it('workshop cases with kerf, trim, prices and offcuts (no published optimum: proven and valid)', () => {
    for (const one of referenceCases('workshop')) expectProven(one)
  })

  it('a sixth of the large workshop cases', () => {
    for (const one of referenceCases('workshop-large').filter((_, at) => at % 6 === 0)) expectProven(one)
  })
})

describe('a search that is cut short', () => {
  it('gives the same plan for the same work', () => {
    for (const { instance } of referenceCases('workshop-large').slice(0, 4)) {
      const budget = { work: 4_000, stop: () => false }
      const once = solveBars(instance, { budget })
      expect(solveBars(instance, { budget })).toEqual(once)
      expect(checkCutPlan(instance, once.patterns).faults).toEqual([])
      expect(once.lowerBound).toBeLessThanOrEqual(once.cost)
    }
  })

  it('ends when the host stops it, with a whole plan and a bound', () => {
    const [one] = referenceCases('full-bars')
    if (!one) throw new Error('no case')
    let asked = 0
    const solved = solveBars(one.instance, { budget: { work: 1e12, stop: () => ++asked > 3 } })
    expect(checkCutPlan(one.instance, solved.patterns).faults).toEqual([])
    expect(solved.lowerBound).toBeLessThanOrEqual(solved.cost)
  })

  it('tells how far the proof is, and its bound never falls nor its cost rises', () => {
    const [one] = referenceCases('workshop')
    if (!one) throw new Error('no case')
    const told: { cost: number; lowerBound: number; state: string }[] = []
    solveBars(one.instance, { budget: PLENTY, report: (progress) => told.push(progress) })
    expect(told.at(-1)?.state).toBe('proven-least')
    for (const [at, now] of told.entries()) {
      expect(now.lowerBound).toBeGreaterThanOrEqual(told[at - 1]?.lowerBound ?? 0)
      expect(now.cost).toBeLessThanOrEqual(told[at - 1]?.cost ?? Number.POSITIVE_INFINITY)
    }
  })
})
