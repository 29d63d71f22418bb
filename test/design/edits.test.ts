import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addChannel,
  addObstacle,
  addSeat,
  addSite,
  applyFix,
  changeCup,
  changeRiser,
  changeSaw,
  copyChannels,
  DEMOS,
  type Design,
  defaultWorkshop,
  deleteChannels,
  deleteSeat,
  deleteSites,
  type Edited,
  editChannels,
  editOffer,
  editPlace,
  editStock,
  inOwnCurrency,
  lockSites,
  matchSites,
  measureDailyUse,
  mirrorChannels,
  mirrorDesign,
  moveChannels,
  moveSite,
  newDesign,
  nextId,
  parseDesign,
  parseWorkshop,
  pinDimension,
  resizeChannel,
  setDesignField,
  setPrice,
  setWorkshopField,
  sitesByCount,
  sitesByPitch,
  spreadSites,
  staggerSites,
  turnChannel
} from '../../shared-model/design'
import { pointOnSill } from '../../shared-model/layout'
import { CATALOGUE } from '../../shared-model/parts'
import { anyDesign } from '../designs/arbitrary'

const done = <T>(edited: Edited<T>): T => {
  if (!edited.ok) throw new Error(`${edited.problem.code} ${JSON.stringify(edited.problem.figures)}`)
  return edited.value
}
const code = <T>(edited: Edited<T>): string => (edited.ok ? 'ok' : edited.problem.code)

const part = <T extends { readonly id: string }>(list: readonly T[], id: string): T => {
  const found = list.find((each) => each.id === id)
  if (found === undefined) throw new Error(id)
  return found
}
const downpipe = part(CATALOGUE.profiles, 'downpipe-80')
const cap = part(CATALOGUE.closures, 'end-cap-downpipe-80')
const cup = part(CATALOGUE.cups, 'cup-2in')
const saw = part(CATALOGUE.saws, 'saw-mm-52')
const kitchen = DEMOS[0]?.design ?? newDesign('none')
const channelOf = (design: Design, id = 'c1') => part(design.channels, id)
const positions = (design: Design, id = 'c1'): readonly number[] => channelOf(design, id).sites.map(({ atMm }) => atMm)

/** A channel of 1000 mm with one seat, no site yet. */
const bare = (): Design => {
  const seated = addSeat(newDesign('d1'), { name: 'Seat', saw, cup })
  return done(
    addChannel(seated, { profile: downpipe, datumClosure: cap, farClosure: cap, xMm: 20, yMm: 60, lengthMm: 1_000 })
  )
}
const holds = { seatId: 'seat1', cropId: null }

describe('new documents', () => {
  it('pass the parser', () => {
    expect(parseDesign(newDesign('d1', 'Mine')).ok).toBe(true)
    expect(parseWorkshop(defaultWorkshop()).ok).toBe(true)
    expect(parseDesign(bare()).ok).toBe(true)
  })

  it('give the built-in workshop every catalogue saw, no offcut and no price', () => {
    const { saws, rack, stock, sheets, offers } = defaultWorkshop()
    expect(saws.map((owned) => owned.saw)).toEqual(CATALOGUE.saws)
    expect(rack).toEqual([])
    expect([...stock, ...sheets].every(({ offer }) => offer.priceMinor === null)).toBe(true)
    expect(offers).toEqual([])
  })

  it('take the next free id, the same each time', () => {
    expect(nextId('c', [])).toBe('c1')
    expect(nextId('c', [{ id: 'c1' }, { id: 'c3' }])).toBe('c4')
    expect(nextId('c', [{ id: 'c1' }, { id: 'c2' }])).toBe('c3')
  })
})

describe('channels', () => {
  it('keep every hole where it is on the sill when the datum end is pulled', () => {
    const pulled = done(resizeChannel(kitchen, 'c2', 760, 'datum'))
    const spot = (design: Design) =>
      channelOf(design, 'c2').sites.map((site) => pointOnSill(channelOf(design, 'c2'), site.atMm))
    expect(spot(pulled)).toEqual(spot(kitchen))
    // 760 − 720 = 40 mm more before each hole.
    expect(positions(pulled, 'c2')).toEqual(positions(kitchen, 'c2').map((atMm) => atMm + 40))
  })

  it('leave all positions when the far end is pulled', () => {
    const pulled = done(resizeChannel(kitchen, 'c1', 900, 'far'))
    expect(channelOf(pulled)).toEqual({ ...channelOf(kitchen), lengthMm: 900 })
  })

  it('refuse a length that no channel has, and name the bounds', () => {
    expect(resizeChannel(kitchen, 'c1', 19, 'far')).toEqual({
      ok: false,
      problem: {
        code: 'field-out-of-range',
        figures: { field: 'channels.c1.lengthMm', value: 19, least: 20, most: 12_000 },
        where: { field: 'channels.c1.lengthMm' }
      }
    })
    expect(code(moveChannels(kitchen, ['c1'], Number.NaN, 0))).toBe('field-not-finite')
    expect(code(moveChannels(kitchen, ['c1', 'c9'], 1, 0))).toBe('edit-not-found')
  })

  it('turn about the middle of their length', () => {
    const turned = done(turnChannel(kitchen, 'c1', 90))
    // Middle at 14 + 350 = 364 along, 48 across; turned the datum end lies 350 mm nearer to the room.
    expect(channelOf(turned)).toMatchObject({ heading: 90, xMm: 364, yMm: -302 })
    expect(channelOf(done(turnChannel(turned, 'c1', 0)))).toEqual(channelOf(kitchen))
  })

  it('are copied with new ids at the end of the list, and deleted with what was pinned to them', () => {
    const copied = done(copyChannels(kitchen, ['c1', 'c3'], 10, 0))
    expect(copied.channels.map(({ id }) => id)).toEqual(['c1', 'c2', 'c3', 'c4', 'c5'])
    expect(copied.channels.at(-1)?.profileId).toBe('en1401-110x3.2')
    const pinned = pinDimension(copied, { kind: 'sill', edge: 'left' }, { kind: 'site', channelId: 'c4', siteId: 's1' })
    const gone = done(deleteChannels(pinned, ['c4']))
    expect(gone.dimensions).toEqual([])
    expect(parseDesign(gone).ok).toBe(true)
    expect(code(deleteChannels(gone, ['c4']))).toBe('edit-not-found')
  })

  it('mirrored twice are as they were', () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const ids = design.channels.map(({ id }) => id)
        for (const twice of [
          mirrorDesign(mirrorDesign(design)),
          done(mirrorChannels(done(mirrorChannels(design, ids)), ids))
        ]) {
          twice.channels.forEach((channel, k) => {
            const before = design.channels[k]
            expect(channel.xMm).toBeCloseTo(before?.xMm ?? Number.NaN, 6)
            expect({ ...channel, xMm: 0 }).toEqual({ ...before, xMm: 0 })
          })
        }
      }),
      { seed: 99, numRuns: 40 }
    )
  })

  it('take a field for several at once, or none of them', () => {
    const edited = done(editChannels(kitchen, ['c1', 'c2'], { fillShare: 0.5 }))
    expect(edited.channels.map(({ fillShare }) => fillShare)).toEqual([0.5, 0.5, 0.45])
    expect(code(editChannels(kitchen, ['c1', 'c2'], { fillShare: 1.5 }))).toBe('field-out-of-range')
  })
})

describe('sites', () => {
  // Cap over the pipe: depth 40 mm from its catalogue entry is read here, web 10 mm, hole 52 mm.
  const leastEndMm = Math.max(cap.insideDepthMm, cap.outsideDepthMm) + 10 + 26

  it('by pitch are as many as fit: ⌊(L − 2e)/p⌋ + 1', () => {
    const row = done(sitesByPitch(bare(), 'c1', { spread: 'from-datum', pitchMm: 200 }, holds))
    const count = Math.floor((1_000 - 2 * leastEndMm) / 200) + 1
    expect(positions(row)).toHaveLength(count)
    expect(positions(row)[0]).toBeCloseTo(leastEndMm, 6)
    const even = done(sitesByPitch(bare(), 'c1', { spread: 'even', pitchMm: 200, endMm: 100 }, holds))
    // (1000 − 200)/200 + 1 = 5 sites, 800 mm from first to last: 100 mm at each end.
    expect(positions(even)).toEqual([100, 300, 500, 700, 900])
  })

  it('refuse a pitch below hole and web', () => {
    expect(sitesByPitch(bare(), 'c1', { spread: 'even', pitchMm: 61 }, holds)).toMatchObject({
      problem: { code: 'field-out-of-range', figures: { value: 61, least: 62 } }
    })
  })

  it('by count fill the length evenly, and say when there is no room', () => {
    const row = done(sitesByCount(bare(), 'c1', { spread: 'even', count: 4 }, holds))
    // An equal share of 250 mm each: the first in the middle of its share.
    expect(positions(row)).toEqual([125, 375, 625, 875])
    expect(code(sitesByCount(bare(), 'c1', { spread: 'even', count: 40 }, holds))).toBe('edit-no-room')
    expect(code(sitesByCount(bare(), 'c1', { spread: 'even', count: 1e9 }, holds))).toBe('edit-no-room')
    expect(code(sitesByCount(bare(), 'c1', { spread: 'even', count: Number.NaN }, holds))).toBe('edit-no-room')
  })

  it('keep their names and what sits in them when a row is put in anew', () => {
    const four = done(sitesByCount(bare(), 'c1', { spread: 'even', count: 4 }, holds))
    const three = done(sitesByCount(four, 'c1', { spread: 'even', count: 3 }, holds))
    expect(channelOf(three).sites.map(({ id }) => id)).toEqual(['s1', 's2', 's3'])
    const six = done(sitesByCount(three, 'c1', { spread: 'even', count: 6 }, holds))
    expect(new Set(channelOf(six).sites.map(({ id }) => id)).size).toBe(6)
  })

  it('stay where they are when locked', () => {
    const four = done(sitesByCount(bare(), 'c1', { spread: 'even', count: 4 }, holds))
    const locked = done(lockSites(done(moveSite(four, 'c1', 's2', 300)), 'c1', ['s2'], true))
    expect(positions(done(moveSite(locked, 'c1', 's2', 500)))[1]).toBe(300)
    const spread = done(spreadSites(locked, 'c1'))
    expect(positions(spread)[1]).toBe(300)
    expect(positions(spread)[0]).toBeLessThan(300)
  })

  it('match another channel, or stand in its gaps', () => {
    const two = done(
      copyChannels(done(sitesByCount(bare(), 'c1', { spread: 'even', count: 4 }, holds)), ['c1'], 0, 100)
    )
    const emptied = done(deleteSites(two, 'c2', ['s1', 's3']))
    expect(positions(done(matchSites(emptied, 'c2', 'c1')), 'c2')).toEqual([125, 375, 625, 875])
    // Pitch 250: moved by 125, and the last place, 1000, would be the far end itself.
    expect(positions(done(staggerSites(emptied, 'c2', 'c1')), 'c2')).toEqual([250, 500, 750])
    // 800 long: 875 is past its end; 700 long: 625 is 75 from its end, nearer than the 125 that the other keeps.
    const shorter = (lengthMm: number) => done(resizeChannel(emptied, 'c2', lengthMm, 'far'))
    expect(positions(done(matchSites(shorter(800), 'c2', 'c1')), 'c2')).toEqual([125, 375, 625])
    expect(positions(done(matchSites(shorter(700), 'c2', 'c1')), 'c2')).toEqual([125, 375])
  })

  it('are added and deleted one by one', () => {
    const one = done(addSite(bare(), 'c1', 220.5, holds))
    expect(positions(one)).toEqual([220.5])
    expect(positions(done(deleteSites(one, 'c1', ['s1'])))).toEqual([])
    expect(code(deleteSites(one, 'c1', ['s2']))).toBe('edit-not-found')
    expect(code(addSite(one, 'c1', -1, holds))).toBe('field-out-of-range')
  })
})

describe('seats', () => {
  it('change saw, cup and riser, the riser under the cup', () => {
    const riser = part(CATALOGUE.risers, 'riser-3oz')
    const changed = done(
      changeRiser(done(changeSaw(bare(), 'seat1', part(CATALOGUE.saws, 'saw-mm-48'))), 'seat1', riser)
    )
    expect(changed.seats[0]).toMatchObject({
      sawId: 'saw-mm-48',
      stack: [
        { kind: 'riser', partId: 'riser-3oz' },
        { kind: 'cup', partId: 'cup-2in' }
      ]
    })
    expect(parseDesign(changed).ok).toBe(true)
    const other = done(changeCup(done(changeRiser(changed, 'seat1', null)), 'seat1', part(CATALOGUE.cups, 'cup-3in')))
    expect(other.seats[0]?.stack).toEqual([{ kind: 'cup', partId: 'cup-3in' }])
    expect(code(changeCup(bare(), 'seat9', cup))).toBe('edit-not-found')
  })

  it('are not deleted while a site uses them', () => {
    const used = done(addSite(bare(), 'c1', 200, holds))
    expect(deleteSeat(used, 'seat1')).toMatchObject({ problem: { code: 'edit-in-use', figures: { uses: 1 } } })
    expect(done(deleteSeat(bare(), 'seat1')).seats).toEqual([])
  })
})

describe('fields by path', () => {
  it('are set through the bounds of the parser', () => {
    const moved = done(setDesignField(kitchen, 'channels.c1.sites.s2.atMm', 344.5))
    expect(positions(moved)).toEqual([130, 344.5, 570])
    expect(moved.channels[1]).toBe(kitchen.channels[1])
    expect(setDesignField(kitchen, 'channels.c1.fillShare', 2)).toEqual({
      ok: false,
      problem: {
        code: 'field-out-of-range',
        figures: { field: 'channels.c1.fillShare', value: 2, least: 0, most: 1 },
        where: { field: 'channels.c1.fillShare' }
      }
    })
    expect(done(setDesignField(kitchen, 'sill.lengthsMm.1', 1_470)).sill.lengthsMm).toEqual([1_486, 1_470, 1_484])
    expect(done(setDesignField(kitchen, 'sill.loadLimitKg', null)).sill.loadLimitKg).toBeNull()
  })

  it('find ids that hold dots', () => {
    const path = 'parts.profiles.en1401-110x3.2.averageWallMm'
    expect(part(done(setDesignField(kitchen, path, 3.4)).parts.profiles, 'en1401-110x3.2').averageWallMm).toBe(3.4)
  })

  it.each(['', 'nothing', 'channels.c9.xMm', 'channels.c1.sites.99.atMm', '__proto__.x', 'title.x'])(
    'refuse %j as a path',
    (path) => {
      expect(setDesignField(kitchen, path, 1).ok).toBe(false)
    }
  )

  it('take a finding’s proposal', () => {
    const fixed = done(applyFix(kitchen, { field: 'channels.c1.lengthMm', value: 690 }))
    expect(channelOf(fixed).lengthMm).toBe(690)
    expect(code(applyFix(kitchen, { field: 'channels.c1.profileId', value: 'gone' }))).toBe('reference-dangling')
  })

  it('work on the workshop, its saws by their own id', () => {
    const workshop = DEMOS[0]?.workshop ?? defaultWorkshop()
    const dearer = done(setWorkshopField(workshop, 'saws.saw-mm-52.priceMinor', 1_199))
    expect(dearer.saws.find(({ saw: { id } }) => id === 'saw-mm-52')?.priceMinor).toBe(1_199)
    expect(code(setWorkshopField(workshop, 'pricing.marginPercent', 100))).toBe('field-out-of-range')
  })
})

describe('the rest', () => {
  it('sets a price without touching what else is known of an offer', () => {
    const workshop = DEMOS[0]?.workshop ?? defaultWorkshop()
    const dearer = done(setPrice(workshop, 'stock', 'drain-110-2000', { priceMinor: 1_350 }))
    expect(part(dearer.stock, 'drain-110-2000').offer).toEqual({
      ...part(workshop.stock, 'drain-110-2000').offer,
      priceMinor: 1_350
    })
    expect(code(setPrice(workshop, 'stock', 'drain-110-2000', { priceMinor: -1 }))).toBe('field-out-of-range')
    expect(code(editStock(workshop, 'none', { lengthMm: 1 }))).toBe('edit-not-found')
  })

  it('takes a price that is entered for one in the shop’s own currency, and one that stands only when told to', () => {
    const workshop = DEMOS[1]?.workshop ?? defaultWorkshop()
    const [first] = workshop.offers
    const id = first?.id ?? ''
    const foreign = done(editOffer(workshop, id, { currency: 'JPY' }))
    expect(part(foreign.offers, id).currency).toBe('JPY')
    expect(part(done(setPrice(foreign, 'offers', id, { supplier: 'Pier yard' })).offers, id).currency).toBe('JPY')
    expect(part(done(setPrice(foreign, 'offers', id, { priceMinor: 4_321 })).offers, id)).not.toHaveProperty('currency')
    expect(done(inOwnCurrency(foreign, id))).toEqual(workshop)
    expect(code(inOwnCurrency(foreign, 'none'))).toBe('edit-not-found')
  })

  it('keeps obstacles and the place within the bounds of the parser', () => {
    const vase = { name: 'Vase', xMm: 0, yMm: 0, lengthMm: 100, depthMm: 100, heightMm: 200 }
    expect(done(addObstacle(kitchen, vase)).sill.obstacles).toEqual([{ ...vase, id: 'x1' }])
    expect(code(addObstacle(kitchen, { ...vase, lengthMm: 0 }))).toBe('field-out-of-range')
    expect(code(editPlace(kitchen, { outletDistanceMm: -5 }))).toBe('field-out-of-range')
  })

  it('keeps what the grower measured that a plant drinks, and refuses what no plant does', () => {
    const [crop] = kitchen.crops
    const id = crop?.id ?? ''
    expect(done(measureDailyUse(kitchen, id, 120)).crops[0]).toMatchObject({
      dailyUseMl: { least: 120, most: 120 },
      evidence: { dailyUseMl: { grade: 'measured', source: 'user' } }
    })
    expect(done(measureDailyUse(kitchen, id, null)).crops[0]?.dailyUseMl).toBeNull()
    expect(code(measureDailyUse(kitchen, id, 20_000))).toBe('field-out-of-range')
    expect(code(measureDailyUse(kitchen, 'gone', 10))).toBe('edit-not-found')
  })
})
