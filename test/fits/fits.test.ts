import { describe, expect, it } from 'vitest'
import {
  addChannel,
  addSite,
  DEMOS,
  type Design,
  editSill,
  pinDimension,
  pinNote,
  sitesByPitch
} from '../../shared-model/design'
import { type FitWish, fits, takeFit } from '../../shared-model/fits'
import { stockForRows } from '../../shared-model/fits/stock-for-rows'
import { evaluate } from '../../shared-model/plan'

const ON = '2026-05-01'
const NEVER = () => false
const MANY = { work: 100_000, stop: NEVER }

const [demo] = DEMOS
const model = demo?.design.channels[0]
const site = model?.sites[0]
if (demo === undefined || model === undefined || site === undefined || site.cropId === null) {
  throw new Error('the demo has a channel with a planted site')
}
const { workshop } = demo

const wish: FitWish = {
  profileId: model.profileId,
  turned: false,
  closureId: model.datumClosureId,
  seatId: site.seatId,
  cropId: site.cropId,
  fillShare: model.fillShare,
  rowGapMm: 20
}

function sillOf(lengthMm: number, depthMm: number, from: Design = demo?.design ?? neverDesign()): Design {
  const made = editSill(from, { lengthsMm: [lengthMm], depthsMm: [depthMm], obstacles: [] })
  if (!made.ok) throw new Error(made.problem.code)
  return made.value
}

const neverDesign = (): Design => {
  throw new Error('there is a demo')
}

interface Figures {
  readonly plants: number
  readonly each: number
  readonly leftOverMm: number
  readonly load: number
}

/** A layout built with the editor's own edits: rows of so many sites, front to back. Null where the plan has a stop. */
function byHand(bare: Design, counts: readonly number[], madeLongerMm: readonly number[] = []): Figures | null {
  const profile = bare.parts.profiles.find((each) => each.id === wish.profileId)
  const closure = bare.parts.closures.find((each) => each.id === wish.closureId)
  const crop = bare.crops.find((each) => each.id === wish.cropId)
  if (profile === undefined || closure === undefined || crop === undefined) throw new Error('the demo has its parts')
  let design: Design = { ...bare, channels: [], dimensions: [], notes: [] }
  const lengths: number[] = []
  const acrossMm = profile.widthMm + 2 * closure.proudMm
  const pitchMm = crop.pitchMm?.least ?? crop.canopyMm
  const { clearanceMm } = bare.sill
  counts.forEach((count, at) => {
    const added = addChannel(design, {
      profile,
      datumClosure: closure,
      farClosure: closure,
      xMm: clearanceMm + closure.addsLengthMm,
      yMm: clearanceMm + acrossMm / 2 + at * (acrossMm + wish.rowGapMm),
      lengthMm: 3000,
      fillShare: wish.fillShare
    })
    if (!added.ok) throw new Error(added.problem.code)
    const id = added.value.channels.at(-1)?.id ?? ''
    // One site of a long row tells how near to the cut end the editor itself puts the first.
    const row = sitesByPitch(
      added.value,
      id,
      { spread: 'from-datum', pitchMm },
      { seatId: wish.seatId, cropId: wish.cropId }
    )
    if (!row.ok) throw new Error(row.problem.code)
    const endMm = Math.min(...(row.value.channels.at(-1)?.sites ?? []).map((each) => each.atMm))
    const lengthMm = madeLongerMm[at] ?? 2 * endMm + (count - 1) * pitchMm
    lengths.push(lengthMm)
    design = {
      ...added.value,
      channels: added.value.channels.map((each) => (each.id === id ? { ...each, lengthMm } : each))
    }
    for (let k = 0; k < count; k += 1) {
      const put = addSite(design, id, endMm + k * pitchMm, { seatId: wish.seatId, cropId: wish.cropId })
      if (!put.ok) throw new Error(put.problem.code)
      design = put.value
    }
  })
  const plan = evaluate(design, workshop, ON, { cuts: 'left-out' })
  if (plan.findings.some((each) => each.severity === 'stop' && each.code !== 'price-missing')) return null
  const stock = stockForRows(lengths, {
    profileId: wish.profileId,
    stock: workshop.stock.filter((each) => each.profileId === wish.profileId),
    rack: workshop.rack.filter((each) => each.profileId === wish.profileId),
    setup: workshop.cutting,
    stop: NEVER
  })
  if (stock === null) return null
  return {
    plants: plan.totals.plants,
    each: stock.costMinor === null ? 0 : stock.costMinor / plan.totals.plants,
    leftOverMm: stock.leftOverMm,
    load: plan.load.filledG
  }
}

/** Every choice of up to three rows of up to so many sites each. */
const everyChoice = (most: number): readonly (readonly number[])[] => {
  const counts = Array.from({ length: most }, (_, at) => at + 1)
  const one = counts.map((a) => [a])
  const two = counts.flatMap((a) => counts.filter((b) => b >= a).map((b) => [a, b]))
  const three = two.flatMap(([a = 0, b = 0]) => counts.filter((c) => c >= b).map((c) => [a, b, c]))
  return [...one, ...two, ...three]
}

const beats = (a: Figures, b: Figures): boolean =>
  a.plants >= b.plants &&
  a.each <= b.each &&
  a.leftOverMm <= b.leftOverMm &&
  a.load <= b.load &&
  (a.plants > b.plants || a.each < b.each || a.leftOverMm < b.leftOverMm || a.load < b.load)

const rounded = (list: readonly Figures[]): readonly string[] =>
  [
    ...new Set(
      list.map(({ plants, each, leftOverMm, load }) =>
        [plants, each.toFixed(6), leftOverMm.toFixed(4), load.toFixed(3)].join(' ')
      )
    )
  ].sort()

const bare = (design: Design): Design => ({ ...design, channels: [] })

describe.each([
  [620, 110],
  [790, 210],
  [960, 330]
])('what fits a sill of %i by %i mm', (lengthMm, depthMm) => {
  const sill = bare(sillOf(lengthMm, depthMm))
  const found = fits(sill, workshop, wish, ON, MANY)
  if (!found.ok) throw new Error(found.problem.code)

  it('is what nothing beats in plants, cost per plant, stock left over and load among all choices built by hand', () => {
    const all = everyChoice(6).flatMap((counts) => byHand(sill, counts) ?? [])
    expect(all.length).toBeGreaterThan(0)
    const proposed = found.value.fits.map(({ plants, costMinor, leftOverMm, load }) => ({
      plants,
      each: costMinor === null ? 0 : costMinor / plants,
      leftOverMm,
      load
    }))
    expect(proposed.filter((one) => all.some((other) => beats(other, one)))).toEqual([])
    const unbeaten = all.filter((one) => !proposed.some((other) => beats(other, one)))
    const named = new Set(rounded(proposed))
    expect(rounded(unbeaten).filter((one) => !named.has(one))).toEqual([])
  })

  it('comes to the same when it is built by hand at its lengths', () => {
    for (const { design, lengthsMm, plants, load, leftOverMm } of found.value.fits) {
      const counts = design.channels.map(({ sites }) => sites.length)
      // A service opening that a longer row has room for takes less than half a gram out of its wall.
      expect(byHand(sill, counts, lengthsMm)).toMatchObject({ plants, leftOverMm, load: expect.closeTo(load, 0) })
    }
  })

  it('was searched whole, and no proposal breaks a stop rule', () => {
    expect(found.value.tried).toBe(found.value.possible)
    for (const { design } of found.value.fits) {
      const plan = evaluate(design, workshop, ON, { cuts: 'left-out' })
      expect(plan.findings.filter((each) => each.severity === 'stop' && each.code !== 'price-missing')).toEqual([])
    }
  })
})

describe('a search that is ended', () => {
  it('tells how many layouts it tried of how many', () => {
    const sill = bare(sillOf(960, 330))
    const whole = fits(sill, workshop, wish, ON, MANY)
    const cut = fits(sill, workshop, wish, ON, { work: 3, stop: NEVER })
    if (!whole.ok || !cut.ok) throw new Error('both searches run')
    expect(cut.value.tried).toBe(3)
    expect(cut.value.possible).toBe(whole.value.possible)
    expect(whole.value.possible).toBeGreaterThan(3)
    const stopped = fits(sill, workshop, wish, ON, { work: 3, stop: () => true })
    expect(stopped.ok && stopped.value.tried).toBe(0)
  })

  it('says when a sill has room for more rows than are tried', () => {
    const found = fits(bare(sillOf(400, 900)), workshop, wish, ON, MANY)
    expect(found.ok && found.value.capped).toBe(true)
  })
})

describe('a row that fills its bar', () => {
  it('is proposed beside the shorter one with as many plants, for it leaves less over', () => {
    const found = fits(bare(sillOf(960, 330)), workshop, wish, ON, MANY)
    if (!found.ok) throw new Error(found.problem.code)
    const shorter = found.value.fits.flatMap((one) =>
      one.leftOverMm < 1
        ? found.value.fits.filter((each) => each.plants === one.plants && each.leftOverMm > 10 && each.load < one.load)
        : []
    )
    expect(shorter.length).toBeGreaterThan(0)
  })
})

describe('taking a proposal', () => {
  const before = pinNote(
    pinDimension(
      pinDimension(sillOf(960, 330), { kind: 'sill', edge: 'left' }, { kind: 'sill', edge: 'right' }),
      { kind: 'sill', edge: 'left' },
      { kind: 'channel', channelId: model.id, end: 'datum' }
    ),
    40,
    50,
    'Tap'
  )
  const found = fits(before, workshop, wish, ON, MANY)
  const fit = found.ok ? found.value.fits[0] : undefined
  if (fit === undefined) throw new Error('something fits')
  const after = takeFit(before, fit)

  it('keeps notes and dimensions of the sill, and lets go of dimensions to channels that are gone', () => {
    expect(after.notes).toBe(before.notes)
    expect(after.dimensions).toEqual([before.dimensions[before.dimensions.length - 2]])
  })

  it('gives its rows ids that no old channel had, so that nothing at the bench passes to them', () => {
    const old = new Set(before.channels.map(({ id }) => id))
    expect(after.channels.some(({ id }) => old.has(id))).toBe(false)
  })

  it('gives its rows the service openings of the old channel of that profile where they stop nothing', () => {
    expect(model.openings.length).toBeGreaterThan(0)
    const kinds = model.openings.map(({ kind }) => kind)
    const fitted =
      found.ok &&
      found.value.fits.some(({ design }) => design.channels.every(({ openings }) => openings.length === kinds.length))
    expect(fitted).toBe(true)
  })
})
