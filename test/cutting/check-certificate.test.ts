import { describe, expect, it } from 'vitest'
import { type BoundCertificate, type CutInstance, checkCertificate } from '../../shared-model/cutting'

/** Gilmore and Gomory 1961: bars of 5, 6 and 9 at 6, 7 and 10; 20 of 4, 10 of 3, 20 of 2; optimum 170. */
const instance: CutInstance = {
  kerf: 0,
  stock: [
    { length: 5, cost: 6, count: null, trim: 0, keep: null, lot: 0 },
    { length: 6, cost: 7, count: null, trim: 0, keep: null, lot: 1 },
    { length: 9, cost: 10, count: null, trim: 0, keep: null, lot: 2 }
  ],
  demand: [
    { length: 4, qty: 20, lotGroup: null },
    { length: 3, qty: 10, lotGroup: null },
    { length: 2, qty: 20, lotGroup: null }
  ]
}

/**
 * By hand: values 5, 3 and 2. The best fillings are 4 on 5 (4 alone, or 3 + 2: 5 ≤ 6), on 6 (4 + 2: 7 ≤ 7) and on 9
 * (4 + 3 + 2: 10 ≤ 10, 4 + 4: 10 ≤ 10). Together 20 × 5 + 10 × 3 + 20 × 2 = 170.
 */
const byHand: BoundCertificate = {
  scale: 1,
  costStep: 1,
  bound: 170,
  parts: [
    {
      least: [0, 0, 0],
      most: [null, null, null],
      pieceValue: [5, 3, 2],
      mostValue: [0, 0, 0],
      leastValue: [0, 0, 0],
      lotOfGroup: []
    }
  ]
}

const [part] = byHand.parts
if (!part) throw new Error('no part')

describe('a bound’s certificate', () => {
  it('worked by hand shows the optimum of the 1961 example', () => {
    expect(checkCertificate(instance, byHand)).toEqual({ valid: true, bound: 170, fault: 'none' })
  })

  it('is refused when a filling is worth more than its bar', () => {
    const dear = { ...byHand, parts: [{ ...part, pieceValue: [5, 3, 3] }] }
    expect(checkCertificate(instance, dear).fault).toBe('pattern-worth-more-than-bar')
  })

  it('is refused when it claims more than it shows', () => {
    expect(checkCertificate(instance, { ...byHand, bound: 171 }).fault).toBe('bound-not-reached')
  })

  it('is refused when its parts leave plans out', () => {
    const few = { ...part, most: [null, null, 4] }
    expect(checkCertificate(instance, { ...byHand, parts: [few] }).fault).toBe('plans-left-out')
    const rest = { ...part, least: [0, 0, 6] }
    expect(checkCertificate(instance, { ...byHand, parts: [few, rest] }).fault).toBe('plans-left-out')
    expect(checkCertificate(instance, { ...byHand, parts: [few, { ...part, least: [0, 0, 5] }] }).valid).toBe(true)
    expect(checkCertificate(instance, { ...byHand, parts: [] }).fault).toBe('plans-left-out')
  })

  it('is refused when it takes off what has no limit, or its figures are not whole', () => {
    const over = { ...byHand, parts: [{ ...part, mostValue: [0, 0, 1] }] }
    expect(checkCertificate(instance, over).fault).toBe('pattern-worth-more-than-bar')
    const half = { ...byHand, parts: [{ ...part, pieceValue: [5, 3, 1.5] }] }
    expect(checkCertificate(instance, half).fault).toBe('figures-not-whole')
  })
})
