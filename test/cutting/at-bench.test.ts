import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type AtBench,
  barTakenBack,
  type CutPlan,
  cutAwayMm,
  cutUpTo,
  drilled,
  foundLong,
  NOTHING_AT_BENCH,
  pinned,
  spoiled
} from '../../shared-model/cutting'
import { aBar, aPiece, onlyCut, planned, setup } from './a-shop'

const stock = [aBar('s', 2000, 1000)]
const pieces = ['a', 'b', 'c'].map((id) => aPiece(id, 600))
const replanned = (bench: AtBench, from = pieces) =>
  onlyCut({
    pieces: from.map((piece) => ({
      ...piece,
      pinnedTo: bench.pins.find(({ pieceId }) => pieceId === piece.id)?.barKey ?? null
    })),
    stock,
    done: bench.bars
  })
const barOf = (cut: CutPlan, key: string) => {
  const bar = cut.bars.find((each) => each.key === key)
  if (!bar) throw new Error(`no bar ${key}`)
  return { ...bar, profileId: cut.profileId }
}
const states = (cut: CutPlan) =>
  cut.bars.flatMap((bar) => bar.pieces.map(({ pieceId, state }) => `${pieceId} ${state}`))

describe('what the bench has settled', () => {
  const before = replanned(NOTHING_AT_BENCH)

  it('a cut piece takes with it what stands before it on its bar, and the plan keeps their places', () => {
    // Three of 600 and their kerfs of 2 fill 1995 usable of one bar.
    const second = before.bars[0]?.pieces[1]?.pieceId ?? ''
    const after = replanned(cutUpTo(NOTHING_AT_BENCH, barOf(before, 's#1'), second))
    expect(after.bars).toHaveLength(1)
    expect(states(after).map((state) => state.split(' ')[1])).toEqual(['cut', 'cut', 'planned'])
    expect(after.bars[0]?.pieces.map(({ startMm }) => startMm)).toEqual([5, 607, 1209])
  })

  it('a spoiled piece is cut again, and what is good of it is a bar of its own', () => {
    const short = [...pieces, aPiece('d', 150)]
    const cut = replanned(NOTHING_AT_BENCH, short)
    const first = cut.bars.find((bar) => bar.key === 's#1')?.pieces[0]
    if (!first) throw new Error('no piece')
    const bench = spoiled(NOTHING_AT_BENCH, barOf(cut, 's#1'), first.pieceId, 400)
    const after = replanned(bench, short)
    expect(states(after)).toContain(`${first.pieceId} spoiled`)
    expect(states(after)).toContain(`${first.pieceId} planned`)
    // 400 mm of it are good: the piece of 150 mm can come from there, so no third bar is opened.
    expect(after.bars.find(({ key }) => key === 's#1/1')).toMatchObject({ mark: 'A1', lengthMm: 400, costMinor: 0 })
    expect(after.bars.filter(({ isOffcut }) => !isOffcut)).toHaveLength(2)
  })

  it('drilled says that a piece is cut, and that its holes are made', () => {
    const first = before.bars[0]?.pieces[0]?.pieceId ?? ''
    const bench = drilled(NOTHING_AT_BENCH, barOf(before, 's#1'), first)
    expect(states(replanned(bench))[0]).toBe(`${first} drilled`)
  })

  it('a bar as long as found holds what still fits it, and can be taken back', () => {
    const bench = foundLong(NOTHING_AT_BENCH, barOf(before, 's#1'), 1300)
    // 1295 hold two of 600, which leaves 91 mm, too short to keep; one leaves 693 and two on a new bar 791, both kept.
    expect(replanned(bench).bars.map((bar) => [bar.lengthMm, bar.pieces.length])).toEqual([
      [1300, 1],
      [2000, 2]
    ])
    expect(replanned(barTakenBack(bench, 's#1'))).toEqual(before)
  })

  it('a bar is used up by its trim, what is cut of it, and a kerf after each', () => {
    const bar = barOf(
      replanned(cutUpTo(NOTHING_AT_BENCH, barOf(before, 's#1'), before.bars[0]?.pieces[0]?.pieceId ?? '')),
      's#1'
    )
    expect(cutAwayMm(bar, setup.kerfMm)).toBe(5 + 600 + 2)
  })

  it('a pinned piece comes from its bar, and a pin that cannot hold is said', () => {
    const free = replanned(NOTHING_AT_BENCH, [...pieces, aPiece('d', 600)])
    const away =
      free.bars.find((bar) => bar.pieces.some(({ pieceId }) => pieceId === 'a'))?.key === 's#1' ? 's#2' : 's#1'
    const after = replanned(pinned(NOTHING_AT_BENCH, 'a', away), [...pieces, aPiece('d', 600)])
    expect(after.bars.find(({ key }) => key === away)?.pieces.map(({ pieceId }) => pieceId)).toContain('a')
    const { findings } = planned({ pieces: [aPiece('a', 600, { pinnedTo: 'gone#1' })], stock })
    expect(findings).toMatchObject([{ code: 'pin-refused', figures: { mark: 'a', why: 'no-such-bar' } }])
    expect(pinned(pinned(NOTHING_AT_BENCH, 'a', away), 'a', null)).toEqual(NOTHING_AT_BENCH)
  })

  it('a piece cut at another length than its channel has now is said', () => {
    const bench = cutUpTo(NOTHING_AT_BENCH, barOf(before, 's#1'), before.bars[0]?.pieces[0]?.pieceId ?? '')
    const longer = pieces.map((piece) => ({ ...piece, lengthMm: 610 }))
    const { findings } = planned({ pieces: longer, stock, done: bench.bars })
    expect(findings).toMatchObject([{ code: 'cut-otherwise', figures: { cutMm: 600, wantedMm: 610 } }])
  })

  it('whatever the bench says, every piece is on some bar once that is not spoiled, and bars add up', () => {
    const acts = fc.array(fc.tuple(fc.nat(20), fc.nat(20), fc.constantFrom('cut', 'drilled', 'spoiled', 'short')), {
      maxLength: 6
    })
    fc.assert(
      fc.property(acts, (list) => {
        let bench = NOTHING_AT_BENCH
        for (const [whichBar, whichPiece, act] of list) {
          const cut = replanned(bench)
          const bar = cut.bars[whichBar % cut.bars.length]
          const piece = bar?.pieces[whichPiece % Math.max(1, bar.pieces.length)]
          if (!bar || !piece) continue
          const of = { ...bar, profileId: cut.profileId }
          if (act === 'cut') bench = cutUpTo(bench, of, piece.pieceId)
          else if (act === 'drilled') bench = drilled(bench, of, piece.pieceId)
          else if (act === 'spoiled') bench = spoiled(bench, of, piece.pieceId, piece.lengthMm / 2)
          else bench = foundLong(bench, of, Math.max(cutAwayMm(bar, setup.kerfMm), bar.lengthMm - 100))
        }
        const after = replanned(bench)
        const good = states(after).filter((state) => !state.endsWith('spoiled'))
        expect(good.map((state) => state.split(' ')[0]).sort()).toEqual(['a', 'b', 'c'])
        for (const bar of after.bars) {
          const sawn = bar.pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
          const kerfs = (bar.cuts - (bar.trimMm > 0 ? 1 : 0)) * setup.kerfMm
          expect(bar.trimMm + sawn + kerfs + bar.leftoverMm).toBeCloseTo(bar.lengthMm, 6)
        }
      }),
      { numRuns: 60, seed: 20261125 }
    )
  })
})
