import { describe, expect, it } from 'vitest'
import {
  clearBench,
  DEMOS,
  type Design,
  nextRevision,
  parseDesignText,
  pinPiece,
  printDesign,
  shortenBar,
  spoilPiece,
  takeBackBar
} from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'

const demo = DEMOS[0]
if (!demo) throw new Error('no demo')
const { design, workshop } = demo
const [cut] = evaluate(design, workshop, '2026-03-14').cuts
const [first] = cut?.bars ?? []
if (!cut || !first) throw new Error('the demo has no bar')
const bar = { ...first, profileId: cut.profileId }
const pieceId = bar.pieces[0]?.pieceId ?? ''
const made = (edited: ReturnType<typeof pinPiece>): Design => {
  if (!edited.ok) throw new Error(edited.problem.code)
  return edited.value
}

describe('what the bench writes into a design', () => {
  it('is in the file and comes back from it', () => {
    const after = made(spoilPiece(made(pinPiece(design, pieceId, bar.key)), bar, pieceId, 100))
    expect(parseDesignText(printDesign(after))).toEqual({ ok: true, value: after })
  })

  it('is refused where more was cut from a bar than it is long, with the least that it must be', () => {
    const after = made(spoilPiece(design, bar, pieceId, 0))
    const cutMm = (after.atBench?.bars[0]?.pieces ?? []).reduce((sum, { lengthMm }) => sum + lengthMm, bar.trimMm)
    const bars = (after.atBench?.bars ?? []).map((each) => ({ ...each, lengthMm: cutMm - 1 }))
    expect(parseDesignText(printDesign({ ...after, atBench: { pins: [], bars } }))).toMatchObject({
      ok: false,
      problem: [{ code: 'field-out-of-range', figures: { value: cutMm - 1, least: cutMm, most: 20_000 } }]
    })
  })

  it('leaves no trace once all of it is taken back', () => {
    expect(made(pinPiece(made(pinPiece(design, pieceId, bar.key)), pieceId, null))).toEqual(design)
    const short = made(shortenBar(design, bar, cut.kerfMm, bar.lengthMm - 50))
    expect(made(takeBackBar(short, bar.key))).toEqual({ ...design, revision: short.revision })
    expect(made(clearBench(short)).atBench).toBeUndefined()
  })

  it('a length that cannot be is refused with both bounds', () => {
    expect(shortenBar(design, bar, cut.kerfMm, bar.lengthMm + 1)).toMatchObject({
      problem: { code: 'field-out-of-range', figures: { field: 'lengthMm', least: bar.trimMm, most: bar.lengthMm } }
    })
    expect(spoilPiece(design, bar, pieceId, Number.NaN)).toMatchObject({ problem: { code: 'field-not-finite' } })
    expect(spoilPiece(design, bar, pieceId, -1)).toMatchObject({
      problem: { code: 'field-out-of-range', figures: { least: 0, most: bar.pieces[0]?.lengthMm } }
    })
  })

  it('a bar or a piece that stands twice is refused with its field', () => {
    const after = made(shortenBar(design, bar, cut.kerfMm, bar.lengthMm - 50))
    const twice = {
      ...after,
      atBench: { pins: [], bars: [...(after.atBench?.bars ?? []), ...(after.atBench?.bars ?? [])] }
    }
    expect(parseDesignText(printDesign(twice))).toMatchObject({
      problem: [{ code: 'id-twice', figures: { id: bar.key } }]
    })
  })
})

describe('the next revision', () => {
  it.each([
    ['', 'A'],
    ['A', 'B'],
    ['Z', 'AA'],
    ['AZ', 'BA'],
    ['3', '4'],
    ['r9', 'r10'],
    ['draft', 'draft.1']
  ])('after %j is %j', (now, next) => {
    expect(nextRevision(now)).toBe(next)
  })
})
