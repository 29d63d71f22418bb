import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkCertificate, cutUpTo, NOTHING_AT_BENCH, planBars, spoiled } from '../../shared-model/cutting'
import { aBar, anOffcut, aPiece, onlyCut, planned, setup } from './a-shop'

const SEED = 77_003
const NM = 1_000_000
const nmOf = (lengthMm: number) => Math.round(lengthMm * NM)

describe('a cut plan', () => {
  it('places each piece from the raw end: trim first, then piece and kerf by turns', () => {
    const cut = onlyCut({
      pieces: [aPiece('a', 1000), aPiece('b', 900), aPiece('c', 800)],
      stock: [aBar('s', 3000, 1000)]
    })
    expect(cut.bars).toHaveLength(1)
    const [bar] = cut.bars
    // 5 trim; 1000 + 2 kerf; 900 + 2; 800: starts 5, 1007, 1909. Left: 2995 − (1000 + 900 + 800 + 3 × 2) = 289 mm.
    expect(bar?.pieces.map(({ mark, startMm }) => [mark, startMm])).toEqual([
      ['a', 5],
      ['b', 1007],
      ['c', 1909]
    ])
    expect(bar?.leftoverMm).toBe(289)
    // Three cuts, and one more that takes the raw end off.
    expect(bar?.cuts).toBe(4)
    expect(bar?.keep).toBe(false)
    expect(cut).toMatchObject({ value: 1000, lowerBound: 1000, proven: true, costMinor: 1000, keptWorthMinor: 0 })
    expect(cut.fewestBars).toBe('proven')
  })

  it('an offcut worth keeping is credited at its share of the new price', () => {
    const cut = onlyCut({ pieces: [aPiece('a', 1000)], stock: [aBar('s', 3000, 1000)] })
    // Left: 2995 − 1002 = 1993 mm; 1993 ÷ 3000 × 1000 × 40 % = 265.7, floored.
    expect(cut).toMatchObject({ costMinor: 1000, keptWorthMinor: 265, value: 735, keptMm: 1993, longestOffcutMm: 1993 })
  })

  it('takes an offcut from the rack when that is cheaper, and leaves it when it is not', () => {
    const pieces = [aPiece('a', 700), aPiece('b', 700)]
    const stock = [aBar('s', 1500, 1000)]
    // Two in one new bar: 1495 ≥ 2 × 702 − 2. The offcut alone holds one; a new bar for the other costs 1000 as well.
    const worthless = { ...setup, keptWorthPercent: 0 }
    const left = onlyCut({ pieces, stock, rack: [anOffcut('o', 750, 200)], setup: worthless })
    expect(left.bars.map(({ stockId }) => stockId)).toEqual(['s'])
    const taken = onlyCut({ pieces, stock, rack: [anOffcut('o', 1402, 200)], setup: worthless })
    expect(taken.bars.map(({ stockId, trimMm }) => [stockId, trimMm])).toEqual([['o', 0]])
    expect(taken.value).toBe(200)
  })

  it('compares by length and says so when a price is missing', () => {
    const { cuts, findings } = planned({
      pieces: [aPiece('a', 900), aPiece('b', 900)],
      stock: [aBar('s', 2000, null), aBar('t', 3000, 1500)]
    })
    expect(cuts[0]).toMatchObject({ costMinor: null, value: 2000, proven: true })
    expect(findings.map(({ code }) => code)).toContain('bars-compared-by-length')
  })

  it('solves each profile apart and letters the bars over all of them', () => {
    const { cuts } = planned({
      pieces: [aPiece('a', 900), aPiece('b', 900, { profileId: 'pipe' })],
      stock: [aBar('s', 1000, 500), aBar('p', 1000, 600, { profileId: 'pipe' })]
    })
    expect(cuts.map(({ profileId, bars }) => [profileId, bars.map(({ mark }) => mark)])).toEqual([
      ['gutter', ['A']],
      ['pipe', ['B']]
    ])
  })

  it('pieces with an allowance are sawn longer', () => {
    const stock = [aBar('s', 2010, 1000)]
    expect(onlyCut({ pieces: [aPiece('a', 1000), aPiece('b', 1000)], stock }).bars).toHaveLength(1)
    const cut = onlyCut({ pieces: [aPiece('a', 1000, { allowanceMm: 4 }), aPiece('b', 1000)], stock })
    expect(cut.bars).toHaveLength(2)
    expect(cut.bars.flatMap(({ pieces }) => pieces.map(({ lengthMm }) => lengthMm)).sort()).toEqual([1000, 1004])
  })
})

describe('pieces that belong together', () => {
  const pieces = ['a', 'b', 'c', 'd'].map((id) => aPiece(id, 700))

  it('come from one bar', () => {
    const stock = [aBar('s', 1500, 1000), aBar('l', 3000, 2500)]
    const apart = onlyCut({ pieces, stock })
    expect(apart.bars.map(({ stockId }) => stockId)).toEqual(['s', 's'])
    const grouped = pieces.map((piece) => ({ ...piece, barGroup: 'window' }))
    const together = onlyCut({ pieces: grouped, stock })
    expect(together.bars.map(({ stockId, pieces: cut }) => [stockId, cut.length])).toEqual([['l', 4]])
  })

  it('come from one lot: not one half from the rack and one from new stock', () => {
    const stock = [aBar('s', 1500, 1000)]
    const rack = [anOffcut('o', 1410, 100)]
    expect(
      onlyCut({ pieces, stock, rack })
        .bars.map(({ stockId }) => stockId)
        .sort()
    ).toEqual(['o', 's'])
    const grouped = pieces.map((piece) => ({ ...piece, lotGroup: 'one look' }))
    const cut = onlyCut({ pieces: grouped, stock, rack })
    expect(cut.bars.map(({ stockId }) => stockId)).toEqual(['s', 's'])
    expect(cut.proven).toBe(true)
    const twoOfOneLot = [anOffcut('o', 1410, 100, { lot: 'x' }), anOffcut('p', 1410, 100, { lot: 'x' })]
    expect(
      onlyCut({ pieces: grouped, stock, rack: twoOfOneLot })
        .bars.map(({ stockId }) => stockId)
        .sort()
    ).toEqual(['o', 'p'])
  })

  it('that are longer together than any bar are a stop, and still cut', () => {
    const grouped = pieces.map((piece) => ({ ...piece, barGroup: 'window' }))
    const { cuts, findings } = planned({ pieces: grouped, stock: [aBar('s', 1500, 1000)] })
    expect(findings[0]).toMatchObject({
      code: 'bar-group-too-long',
      severity: 'stop',
      figures: { lengthMm: 2806, longestMm: 1495 }
    })
    expect(cuts[0]?.bars.flatMap((bar) => bar.pieces)).toHaveLength(4)
  })
})

describe('a piece longer than any bar', () => {
  const pieces = [aPiece('long', 4200), aPiece('b', 500)]
  const stock = [aBar('s', 3000, 1000)]

  it('is a stop that names the piece and the longest bar; the rest is planned', () => {
    const { cuts, findings } = planned({ pieces, stock })
    expect(findings).toContainEqual({
      code: 'piece-too-long',
      severity: 'stop',
      figures: { mark: 'long', profileId: 'gutter', lengthMm: 4200, longestMm: 2995 },
      where: { channelId: 'channel-long' }
    })
    expect(cuts[0]?.uncut).toEqual([{ pieceId: 'long', lengthMm: 4200, longestMm: 2995 }])
    expect(cuts[0]?.bars.flatMap((bar) => bar.pieces.map(({ mark }) => mark))).toEqual(['b'])
  })

  it('is joined from equal parts where joins are allowed', () => {
    const { cuts, findings } = planned({ pieces, stock, setup: { ...setup, joinsAllowed: true } })
    expect(findings[0]).toMatchObject({ code: 'piece-joined', figures: { parts: 2, partMm: 2100 } })
    const marks = cuts[0]?.bars.flatMap((bar) => bar.pieces.map(({ mark, lengthMm }) => `${mark} ${lengthMm}`)).sort()
    expect(marks).toEqual(['b 500', 'longa 2100', 'longb 2100'])
  })
})

describe('a shop without enough bars', () => {
  it('cuts what the counted stock reaches for and says what is left', () => {
    const { cuts, findings } = planned({
      pieces: ['a', 'b', 'c'].map((id) => aPiece(id, 900)),
      stock: [aBar('s', 1000, 500, { count: 2 })]
    })
    expect(cuts[0]?.bars).toHaveLength(2)
    expect(cuts[0]?.uncut).toHaveLength(1)
    expect(findings).toContainEqual(expect.objectContaining({ code: 'stock-runs-out', severity: 'stop' }))
  })
})

describe('a piece pinned to a bar', () => {
  it('stays there, and the rest is solved around it', () => {
    const stock = [aBar('s', 2000, 1000), aBar('l', 4000, 1900)]
    const pieces = [aPiece('a', 900, { pinnedTo: 'l#1' }), aPiece('b', 900), aPiece('c', 900)]
    const cut = onlyCut({ pieces, stock })
    const bar = cut.bars.find(({ key }) => key === 'l#1')
    expect(bar?.pieces.map(({ mark }) => mark).sort()).toEqual(['a', 'b', 'c'])
    expect(cut).toMatchObject({ proven: true, costMinor: 1900 })
  })

  it('that finds no such bar, or no room on it, is refused and planned freely', () => {
    const stock = [aBar('s', 2000, 1000)]
    const pieces = [
      aPiece('a', 1500, { pinnedTo: 's#1' }),
      aPiece('b', 900, { pinnedTo: 's#1' }),
      aPiece('c', 900, { pinnedTo: 'gone#1' })
    ]
    const { cuts, findings } = planned({ pieces, stock })
    expect(findings.map(({ code, figures }) => [code, figures])).toEqual([
      ['pin-refused', { mark: 'b', bar: 's#1', why: 'no-room' }],
      ['pin-refused', { mark: 'c', bar: 'gone#1', why: 'no-such-bar' }]
    ])
    expect(cuts[0]?.bars.flatMap((bar) => bar.pieces)).toHaveLength(3)
  })
})

describe('when the bench disagrees', () => {
  const pieces = ['a', 'b', 'c', 'd'].map((id) => aPiece(id, 900))
  const stock = [aBar('s', 2000, 1000)]

  it('what is cut stays, a spoiled piece is cut again from what is left', () => {
    const before = onlyCut({ pieces, stock })
    const first = before.bars[0]
    const [spoiledPiece, good] = first?.pieces ?? []
    if (!first || !spoiledPiece || !good) throw new Error('no bar with two pieces')
    const bar = { ...first, profileId: 'gutter' }
    const { bars: done } = spoiled(cutUpTo(NOTHING_AT_BENCH, bar, good.pieceId), bar, spoiledPiece.pieceId, 0)
    const cut = onlyCut({ pieces, stock, done })
    const same = cut.bars.find(({ key }) => key === first.key)
    expect(same?.mark).toBe(first.mark)
    expect(same?.pieces.map(({ pieceId, startMm }) => [pieceId, startMm])).toEqual(
      first.pieces.map(({ pieceId, startMm }) => [pieceId, startMm])
    )
    const planned = cut.bars.flatMap((each) => each.pieces.filter(({ state }) => state !== 'spoiled'))
    expect(planned.map(({ pieceId }) => pieceId).sort()).toEqual(['a', 'b', 'c', 'd'])
    expect(cut.bars).toHaveLength(3)
  })

  it('a bar found shorter than planned holds less', () => {
    const cut = onlyCut({
      pieces: pieces.slice(0, 2),
      stock,
      done: [
        {
          key: 's#1',
          mark: 'A',
          stockId: 's',
          isOffcut: false,
          profileId: 'gutter',
          lengthMm: 1700,
          trimMm: 5,
          pieces: [],
          closed: false,
          costMinor: 1000
        }
      ]
    })
    // 1695 holds one piece of 900 and not two: a second bar.
    expect(cut.bars.map(({ key, pieces: on }) => [key, on.length])).toEqual([
      ['s#1', 1],
      ['s#2', 1]
    ])
  })
})

describe('further aims within the least cost', () => {
  it('one long offcut rather than two short ones', () => {
    const cut = onlyCut({
      pieces: [aPiece('a', 900), aPiece('b', 900), aPiece('c', 300), aPiece('d', 300)],
      stock: [aBar('s', 1300, 1000)],
      setup: { ...setup, keptWorthPercent: 0 }
    })
    expect(cut.bars).toHaveLength(2)
    const apart = onlyCut({
      pieces: [aPiece('a', 600), aPiece('b', 500), aPiece('c', 400), aPiece('d', 100)],
      stock: [aBar('s', 1300, 1000)],
      setup: { ...setup, keptWorthPercent: 0 }
    })
    // 600 + 500 + 100 fill one bar (1200 + 3 × 2 of 1295); 400 alone leaves 1295 − 402 = 893 mm.
    expect(apart.longestOffcutMm).toBe(893)
  })
})

describe('what cannot be planned', () => {
  it('names the field and both bounds', () => {
    const asked = { stock: [], rack: [], setup, budget: { work: 100, stop: () => false } }
    expect(planBars({ ...asked, pieces: [aPiece('a', Number.NaN)] })).toEqual({
      ok: false,
      problem: { code: 'not-finite', figures: { what: 'pieces.a.lengthMm' } }
    })
    expect(planBars({ ...asked, pieces: [aPiece('a', -5)] })).toMatchObject({
      problem: { code: 'out-of-range', figures: { least: 1, most: 100_000 } }
    })
    expect(planBars({ ...asked, pieces: [aPiece('a', 5), aPiece('a', 6)] })).toMatchObject({
      problem: { code: 'same-id-twice', figures: { what: 'pieces', id: 'a' } }
    })
    expect(planned({ pieces: [], stock: [] })).toEqual({ cuts: [], findings: [] })
    expect(planned({ pieces: [aPiece('a', 5)], stock: [] }).findings[0]).toMatchObject({ code: 'piece-too-long' })
  })
})

describe('laws of a plan', () => {
  const job = fc.record({
    pieces: fc.array(
      fc.record({ length: fc.integer({ min: 40, max: 1400 }), tenths: fc.integer({ min: 0, max: 9 }) }),
      { minLength: 1, maxLength: 18 }
    ),
    kerfMm: fc.constantFrom(0, 1.6, 2.2, 3.175),
    trimMm: fc.constantFrom(0, 5),
    offcuts: fc.array(fc.integer({ min: 200, max: 1800 }), { maxLength: 3 })
  })
  const run = ({
    pieces,
    kerfMm,
    trimMm,
    offcuts
  }: {
    pieces: { length: number; tenths: number }[]
    kerfMm: number
    trimMm: number
    offcuts: number[]
  }) =>
    onlyCut({
      pieces: pieces.map(({ length, tenths }, at) => aPiece(`p${at}`, length + tenths / 10)),
      stock: [aBar('s', 2438.4, 1290), aBar('l', 3048, 1490)],
      rack: offcuts.map((length, at) => anOffcut(`o${at}`, length, Math.round(length / 10))),
      setup: { ...setup, kerfMm, endTrimMm: trimMm },
      budget: { work: 8_000, stop: () => false }
    })

  it('pieces, kerfs, trim and leftover make up every bar, in whole nanometres, and every piece is cut once', () => {
    fc.assert(
      fc.property(job, (asked) => {
        const cut = run(asked)
        for (const bar of cut.bars) {
          const kerf = nmOf(cut.kerfMm)
          const sawn = bar.pieces.reduce((sum, piece) => sum + nmOf(piece.lengthMm), 0)
          const cuts = bar.cuts - (bar.trimMm > 0 ? 1 : 0)
          const rest = nmOf(bar.lengthMm) - nmOf(bar.trimMm) - sawn - cuts * kerf - nmOf(bar.leftoverMm)
          // The last cut may run out of the bar's end: then it takes less than a kerf, and nothing is left.
          expect(rest).toBeLessThanOrEqual(0)
          expect(rest).toBeGreaterThan(bar.leftoverMm > 0 ? -1 : -Math.max(1, kerf))
        }
        const ids = cut.bars.flatMap((bar) => bar.pieces.map(({ pieceId }) => pieceId)).sort()
        expect(ids).toEqual(asked.pieces.map((_, at) => `p${at}`).sort())
        expect(new Set(cut.bars.map(({ key }) => key)).size).toBe(cut.bars.length)
      }),
      { seed: SEED, numRuns: 30 }
    )
  })

  it('the value is cost less kept worth, never below the bound that its certificate shows', () => {
    fc.assert(
      fc.property(job, (asked) => {
        const cut = run(asked)
        expect(cut.value).toBe((cut.costMinor ?? 0) - cut.keptWorthMinor)
        expect(cut.lowerBound).toBeLessThanOrEqual(cut.value)
        if (cut.certificate === null) throw new Error('no certificate')
        expect(checkCertificate(cut.instance, cut.certificate)).toMatchObject({ valid: true, bound: cut.lowerBound })
      }),
      { seed: SEED, numRuns: 30 }
    )
  })
})
