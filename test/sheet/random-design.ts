import { type Design, defaultWorkshop, newDesign, type Workshop } from '../../shared-model/design'
import type { Channel, ServiceOpening } from '../../shared-model/layout'
import { CATALOGUE } from '../../shared-model/parts'
import type { Seat } from '../../shared-model/seating'

/** A repeatable run of numbers from 0 to 1 (mulberry32). */
const numbersFrom = (seed: number): (() => number) => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

export interface Drawn {
  readonly design: Design
  readonly workshop: Workshop
}

/** A build drawn at random from the catalogue: one to four channels, odd lengths, odd pitches, openings, a batch. */
export const randomBuild = (seed: number, units: 'in' | 'mm'): Drawn => {
  const next = numbersFrom(seed)
  const between = (least: number, most: number): number => least + next() * (most - least)
  const whole = (least: number, most: number): number => Math.floor(between(least, most + 1))
  const pick = <T>(list: readonly T[]): T => {
    const one = list[Math.floor(next() * list.length)]
    if (one === undefined) throw new Error('nothing to pick from')
    return one
  }
  const profiles = CATALOGUE.profiles.filter(
    (profile) => profile.widthMm >= 60 && profile.widthMm <= 130 && profile.heightMm >= 50
  )
  const collar = pick(CATALOGUE.collars)
  const cup = pick(CATALOGUE.cups.filter((one) => one.bodyUnderRimMm > 42 && one.bodyUnderRimMm < 60))
  const riser = pick(CATALOGUE.risers)
  const saws = CATALOGUE.saws.filter((saw) => saw.diameterMm > 40 && saw.diameterMm < 56)
  const seats: readonly Seat[] = [
    { id: 'seat-1', name: 'Cup in its hole', sawId: pick(saws).id, stack: [{ kind: 'cup', partId: cup.id }] },
    {
      id: 'seat-2',
      name: 'Collar and cup',
      sawId: pick(saws).id,
      stack: [
        { kind: 'riser', partId: riser.id },
        { kind: 'collar', partId: collar.id },
        { kind: 'cup', partId: cup.id }
      ]
    }
  ]
  const used = Array.from({ length: whole(1, 4) }, () => pick(profiles))
  const channels = used.map((profile, index): Channel => {
    const lengthMm = between(320, 1500)
    const closure = pick(CATALOGUE.closures)
    const count = whole(1, Math.max(1, Math.floor((lengthMm - 160) / 90)))
    const step = (lengthMm - 160) / Math.max(1, count)
    const sites = Array.from({ length: count }, (_, place) => ({
      id: `s${place + 1}`,
      atMm: 80 + step * (place + between(0.3, 0.7)),
      seatId: pick(seats).id,
      cropId: null,
      locked: false
    }))
    const face = pick(['top', 'front', 'back'] as const)
    const opening: ServiceOpening = {
      id: 'o1',
      kind: 'overflow',
      face,
      atMm: between(24, 50),
      heightMm: profile.heightMm * 0.5,
      diameterMm: 12.7,
      sawId: null,
      closure: 'grommet'
    }
    return {
      id: `c${index + 1}`,
      name: pick(['', 'Sunny side', 'Für Kräuter', 'Room side']),
      profileId: profile.id,
      turned: false,
      xMm: 10,
      yMm: 80 + index * 140,
      heading: 0,
      lengthMm,
      datumClosureId: closure.id,
      farClosureId: closure.id,
      supports: [],
      sites,
      openings: next() < 0.5 ? [opening] : [],
      fillShare: between(0.3, 0.8)
    }
  })
  const design: Design = {
    ...newDesign(`random-${seed}`, `Build ${seed}`),
    number: `N-${seed}`,
    maker: 'Älvström & Söhne',
    sill: { ...newDesign('x').sill, lengthsMm: [1600], depthsMm: [600] },
    channels,
    seats,
    parts: {
      profiles: [...new Set(used)],
      closures: [...CATALOGUE.closures],
      cups: [cup],
      risers: [riser],
      collars: [collar],
      plantCollars: [],
      saws: [...CATALOGUE.saws]
    },
    quantity: whole(1, 6)
  }
  const shop = defaultWorkshop({
    units,
    paper: units === 'in' ? 'letter' : 'a4',
    mmGraduation: next() < 0.5 ? 0.5 : 1,
    inchGraduation: next() < 0.5 ? 16 : 32
  })
  const offer = { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }
  const workshop: Workshop = {
    ...shop,
    stock: [...new Set(used)].map((profile) => ({
      id: `bar-${profile.id}`,
      profileId: profile.id,
      lengthMm: pick([2000, 3000, 3048, 6000]),
      offer,
      count: null
    })),
    sheets: [
      {
        id: 'foam',
        name: 'Foam sheet',
        material: collar.material,
        widthMm: 600,
        heightMm: 400,
        thicknessMm: collar.thicknessMm,
        offer,
        count: null,
        isOffcut: false
      }
    ]
  }
  return { design, workshop }
}
