import fc from 'fast-check'
import { CROPS } from '../../shared-model/crops'
import type { AtBench } from '../../shared-model/cutting'
import { type Design, defaultWorkshop, newDesign, type Place, type Workshop } from '../../shared-model/design'
import type { Channel, ServiceOpening, Site, Support } from '../../shared-model/layout'
import { CATALOGUE } from '../../shared-model/parts'
import { STAGES } from '../../shared-model/reservoir'
import type { Seat, StackItem } from '../../shared-model/seating'

/** Lengths to a tenth of a millimetre: what a person types and what a drag leaves. */
const tenths = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 10), max: Math.round(most * 10) }).map((value) => value / 10)

const { profiles, closures, cups, risers, collars, plantCollars, saws } = CATALOGUE

const stack = fc
  .record({
    riser: fc.option(fc.constantFrom(...risers), { freq: 3 }),
    collar: fc.option(fc.constantFrom(...collars), { freq: 3 }),
    cup: fc.constantFrom(...cups),
    plantCollar: fc.option(fc.constantFrom(...plantCollars), { freq: 2 })
  })
  .map(({ riser, collar, cup, plantCollar }): readonly StackItem[] => [
    ...(riser === null ? [] : [{ kind: 'riser', partId: riser.id } as const]),
    ...(collar === null ? [] : [{ kind: 'collar', partId: collar.id } as const]),
    { kind: 'cup', partId: cup.id },
    ...(plantCollar === null ? [] : [{ kind: 'plant-collar', partId: plantCollar.id } as const])
  ])

const seats: fc.Arbitrary<readonly Seat[]> = fc
  .array(fc.record({ sawId: fc.constantFrom(...saws).map(({ id }) => id), stack }), { minLength: 1, maxLength: 4 })
  .map((list) => list.map((seat, k) => ({ id: `seat${k + 1}`, name: `Seat ${k + 1}`, ...seat })))

const opening = (lengthMm: number): fc.Arbitrary<Omit<ServiceOpening, 'id'>> =>
  fc.record({
    kind: fc.constantFrom('fill-port', 'overflow', 'drain', 'level-sight', 'vent', 'plug'),
    face: fc.constantFrom('top', 'front', 'back', 'bottom', 'datum-end', 'far-end'),
    atMm: tenths(0, lengthMm),
    heightMm: tenths(0, 100),
    diameterMm: tenths(5, 40),
    sawId: fc.option(fc.constantFrom(...saws).map(({ id }) => id)),
    closure: fc.constantFrom('plug', 'grommet', 'bulkhead', 'cap', 'screen', 'clear-strip', 'float-stick', 'none')
  })

const sites = (lengthMm: number, seatCount: number): fc.Arbitrary<readonly Omit<Site, 'id'>[]> =>
  fc.array(
    fc.record({
      atMm: tenths(0, lengthMm),
      seatId: fc.integer({ min: 1, max: seatCount }).map((k) => `seat${k}`),
      cropId: fc.option(fc.constantFrom(...CROPS).map(({ id }) => id)),
      locked: fc.boolean()
    }),
    { maxLength: 8 }
  )

const supports = (lengthMm: number): fc.Arbitrary<readonly Omit<Support, 'id'>[]> =>
  fc.array(
    fc.record({
      atMm: tenths(0, lengthMm),
      alongMm: tenths(5, 80),
      acrossMm: tenths(20, 150),
      heightMm: tenths(1, 60)
    }),
    { maxLength: 4 }
  )

const numbered = <T extends object>(list: readonly T[], prefix: string): readonly (T & { readonly id: string })[] =>
  list.map((each, k) => ({ ...each, id: `${prefix}${k + 1}` }))

const channel = (seatCount: number): fc.Arbitrary<Omit<Channel, 'id'>> =>
  tenths(60, 2_400).chain((lengthMm) =>
    fc
      .record({
        profile: fc.constantFrom(...profiles),
        datum: fc.constantFrom(...closures),
        far: fc.constantFrom(...closures),
        turned: fc.boolean(),
        xMm: tenths(-200, 2_000),
        yMm: tenths(-100, 400),
        heading: fc.constantFrom(0, 90, 180, 270),
        supports: supports(lengthMm),
        sites: sites(lengthMm, seatCount),
        openings: fc.array(opening(lengthMm), { maxLength: 3 }),
        fillShare: tenths(0, 1)
      })
      .map(({ profile, datum, far, ...rest }) => ({
        ...rest,
        name: profile.name,
        profileId: profile.id,
        lengthMm,
        datumClosureId: datum.id,
        farClosureId: far.id,
        supports: numbered(rest.supports, 'f'),
        sites: numbered(rest.sites, 's'),
        openings: numbered(rest.openings, 'o')
      }))
  )

const pieceId = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 6 }))
  .map(([channelAt, unit]) => `c${channelAt}.${unit}`)
const barKey = fc.oneof(
  fc
    .tuple(fc.constantFrom(...defaultWorkshop().stock), fc.integer({ min: 1, max: 3 }))
    .map(([bar, k]) => `${bar.id}#${k}`),
  fc.constantFrom('off1', 'off2', 'off9', 'off1/1', 'no such bar')
)

const place: fc.Arbitrary<Place> = fc.record({
  where: fc.constantFrom('inside', 'outside', 'unknown'),
  overPublicWay: fc.constantFrom('yes', 'no', 'unknown'),
  exitWindow: fc.constantFrom('yes', 'no', 'unknown'),
  windowOpens: fc.constantFrom('inward', 'outward', 'slides', 'fixed', 'unknown'),
  children: fc.constantFrom('yes', 'no', 'unknown'),
  outletDistanceMm: fc.option(tenths(0, 5_000)),
  liner: fc.constantFrom('none', 'food-contact', 'other', 'unknown'),
  stockOrigin: fc.constantFrom('new', 'reclaimed', 'unknown')
})

const feed: fc.Arbitrary<Design['water']['feed']> = fc.oneof(
  fc.constant({ kind: 'none' as const }),
  fc.record({
    kind: fc.constant('concentrate' as const),
    name: fc.constant('Feed'),
    doseMlPerL: tenths(0.5, 20),
    doseEcMsPerCm: tenths(0.5, 3),
    targetEcMsPerCm: tenths(0, 4)
  }),
  fc.record({
    kind: fc.constant('salts' as const),
    salts: fc.array(
      fc.record({
        name: fc.constantFrom('Calcium nitrate', 'Base salts'),
        gPerL: tenths(0, 3),
        percent: fc.record({ N: tenths(0, 20), Ca: tenths(0, 20), K2O: tenths(0, 30) })
      }),
      { maxLength: 2 }
    )
  })
)

/** What a bench may have settled of any such design: ids that fit its pieces and bars, and some that fit nothing. */
const atBench: fc.Arbitrary<AtBench> = fc
  .record({
    pins: fc.uniqueArray(fc.record({ pieceId, barKey }), { selector: (pin) => pin.pieceId, maxLength: 3 }),
    bars: fc.uniqueArray(
      fc.record({
        key: barKey,
        profile: fc.constantFrom(...profiles),
        isOffcut: fc.boolean(),
        lengthMm: tenths(0, 4_000),
        trimMm: tenths(0, 30),
        pieces: fc.uniqueArray(
          fc.record({ pieceId, lengthMm: tenths(0, 2_500), state: fc.constantFrom('cut', 'drilled', 'spoiled') }),
          { selector: (piece) => piece.pieceId, maxLength: 3 }
        ),
        closed: fc.boolean(),
        costMinor: fc.option(fc.integer({ min: 0, max: 10_000 }))
      }),
      { selector: (bar) => bar.key, maxLength: 3 }
    )
  })
  .map(({ pins, bars }) => {
    const seen = new Set<string>()
    // A piece is cut once, unless it is spoiled.
    const first = (piece: { readonly pieceId: string; readonly state: string }): boolean =>
      piece.state === 'spoiled' || (!seen.has(piece.pieceId) && seen.add(piece.pieceId).size > 0)
    return {
      pins,
      bars: bars.map(({ profile, lengthMm, ...bar }, k) => ({
        ...bar,
        // What was cut from it was there.
        lengthMm: Math.max(
          lengthMm,
          bar.pieces.reduce((sum, piece) => sum + piece.lengthMm, bar.trimMm)
        ),
        mark: `Z${k + 1}`,
        stockId: bar.key.replace(/#\d+$/, ''),
        profileId: profile.id,
        pieces: bar.pieces.filter(first).map((piece, at) => ({ ...piece, mark: `${at + 1}` }))
      }))
    }
  })

/** Any design that the parser passes: what a hand could sketch, wise or not. */
export const anyDesign: fc.Arbitrary<Design> = seats.chain((seatList) =>
  fc
    .record({
      channels: fc.array(channel(seatList.length), { maxLength: 4 }),
      place,
      lengthMm: tenths(300, 2_500),
      depthMm: tenths(60, 500),
      clearHeightMm: tenths(100, 1_500),
      fallAlongMmPerM: tenths(-10, 10),
      fallAcrossMmPerM: tenths(-10, 10),
      loadLimitKg: fc.option(tenths(5, 80)),
      stage: fc.constantFrom(...STAGES),
      feed,
      sourceEc: fc.option(tenths(0, 2)),
      endShare: tenths(0, 1),
      growthShare: tenths(0, 1),
      quantity: fc.integer({ min: 1, max: 5 }),
      bench: fc.option(atBench)
    })
    .map((drawn): Design => {
      const base = newDesign('any', 'Any design')
      return {
        ...base,
        sill: {
          ...base.sill,
          lengthsMm: [drawn.lengthMm],
          depthsMm: [drawn.depthMm],
          clearHeightMm: drawn.clearHeightMm,
          fallAlongMmPerM: drawn.fallAlongMmPerM,
          fallAcrossMmPerM: drawn.fallAcrossMmPerM,
          loadLimitKg: drawn.loadLimitKg
        },
        place: drawn.place,
        channels: numbered(drawn.channels, 'c'),
        seats: seatList,
        parts: { profiles, closures, cups, risers, collars, plantCollars, saws },
        crops: CROPS,
        water: {
          ...base.water,
          stage: drawn.stage,
          feed: drawn.feed,
          sourceEcMsPerCm: drawn.sourceEc,
          endShare: drawn.endShare
        },
        growthShare: drawn.growthShare,
        quantity: drawn.quantity,
        ...(drawn.bench === null ? {} : { atBench: drawn.bench })
      }
    })
)

const TIMES = Object.keys(defaultWorkshop().times)

/** A workshop with the usual bars and sheets, some of them priced, and offcuts on the rack. */
export const anyWorkshop: fc.Arbitrary<Workshop> = fc
  .record({
    units: fc.constantFrom('in', 'mm'),
    priceMinor: fc.option(fc.integer({ min: 0, max: 50_000 })),
    kerfMm: tenths(0, 4),
    endTrimMm: tenths(0, 20),
    joinsAllowed: fc.boolean(),
    rack: fc.array(fc.record({ profile: fc.constantFrom(...profiles), lengthMm: tenths(100, 2_000) }), {
      maxLength: 3
    }),
    hourlyRateMinor: fc.integer({ min: 0, max: 5_000 }),
    marginPercent: tenths(0, 60),
    feePercent: tenths(0, 50),
    ways: fc.integer({ min: 0, max: 2 }),
    measured: fc.option(fc.subarray(TIMES))
  })
  .map((drawn): Workshop => {
    const base = defaultWorkshop({ units: drawn.units }, drawn.units === 'in' ? 'USD' : 'EUR')
    const offer = { priceMinor: drawn.priceMinor, supplier: 'Any', pricedOn: '2026-01-05', taxInside: false }
    return {
      ...base,
      id: 'any-workshop',
      ...(drawn.measured === null
        ? {}
        : { timesMeasured: Object.fromEntries(drawn.measured.map((time) => [time, '2026-02-03'])) }),
      cutting: {
        ...base.cutting,
        kerfMm: drawn.kerfMm,
        endTrimMm: drawn.endTrimMm,
        joinsAllowed: drawn.joinsAllowed
      },
      stock: base.stock.map((bar) => ({ ...bar, offer })),
      sheets: base.sheets.map((sheet) => ({ ...sheet, offer })),
      rack: drawn.rack.map(({ profile, lengthMm }, k) => ({
        id: `off${k + 1}`,
        profileId: profile.id,
        lengthMm,
        worthMinor: 100,
        cameFrom: '',
        cameOn: ''
      })),
      pricing: {
        ...base.pricing,
        hourlyRateMinor: drawn.hourlyRateMinor,
        marginPercent: drawn.marginPercent,
        ways: Array.from({ length: drawn.ways }, (_, k) => ({
          id: `way${k + 1}`,
          name: `Way ${k + 1}`,
          feePercent: drawn.feePercent,
          fixedFeeMinor: 30,
          feeOnTax: false,
          feeOnPostage: false,
          postageChargedMinor: 0,
          postageCostMinor: 500,
          fixedPerBatchMinor: 0,
          givenPriceMinor: null
        }))
      }
    }
  })
