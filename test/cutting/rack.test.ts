import { describe, expect, it } from 'vitest'
import { markAsBuilt, offcutLabels } from '../../shared-model/cutting'
import { aBar, anOffcut, aPiece, onlyCut } from './a-shop'

describe('the rack after a job is built', () => {
  const stock = [aBar('s', 3000, 1000)]
  const rack = [anOffcut('o', 1410, 100), anOffcut('other', 500, 30, { profileId: 'pipe' })]
  const cut = onlyCut({ pieces: [aPiece('a', 700), aPiece('b', 700), aPiece('c', 1500)], stock, rack })
  const built = markAsBuilt({ rack, cuts: [cut], from: 'Kitchen sill', on: '2026-05-01' })

  it('used offcuts are off, new ones on with where and when they came from', () => {
    expect(built.used.map(({ id }) => id)).toEqual(['o'])
    // 2995 − 1502 = 1493 mm of the new bar.
    expect(built.added).toMatchObject([
      { profileId: 'gutter', lengthMm: 1493, cameFrom: 'Kitchen sill', cameOn: '2026-05-01' }
    ])
    expect(built.rack.map(({ id }) => id)).toEqual(['other', built.added[0]?.id])
    expect(built.bars).toEqual([{ stockId: 's', count: 1 }])
  })

  it('undo puts the rack back as it was', () => {
    expect(built.before).toBe(rack)
  })

  it('the next plan takes the new offcut when that is cheaper', () => {
    const next = onlyCut({ pieces: [aPiece('d', 1400)], stock, rack: built.rack })
    expect(next.bars.map(({ stockId }) => stockId)).toEqual([built.added[0]?.id])
  })

  it('two offcuts of one job have names of their own, and a label each', () => {
    const again = markAsBuilt({ rack: built.rack, cuts: [cut], from: 'Kitchen sill', on: '2026-05-01' })
    const ids = again.rack.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    // What an id of a document may be, whatever the job is called.
    for (const { id } of again.added) expect(id).toMatch(/^[A-Za-z0-9][A-Za-z0-9._-]{0,95}$/)
    expect(offcutLabels(again.added)).toMatchObject([{ lengthMm: 1493, cameFrom: 'Kitchen sill' }])
  })
})
