import { describe, expect, it } from 'vitest'
import { DEMOS, type DocumentProblem, parseDesign, parseWorkshop, type Workshop } from '../../shared-model/design'
import { problemText } from '../../shared-model/words'

const [, market] = DEMOS
if (market === undefined) throw new Error('the demo is missing')

/** A workshop in which every field that pricing reads is there, the optional ones too. */
const shop: Workshop = {
  ...market.workshop,
  saws: market.workshop.saws.slice(0, 1).map((each) => ({ ...each, priceMinor: 1_800, lifeHoles: 400 })),
  stock: market.workshop.stock.slice(0, 1).map((each) => ({ ...each, id: 'bar', count: 6 })),
  rack: market.workshop.rack.slice(0, 1).map((each) => ({ ...each, id: 'rest' })),
  sheets: market.workshop.sheets.slice(0, 1).map((each) => ({ ...each, id: 'foam', count: 3 })),
  sheetSetup: { ...market.workshop.sheetSetup, keepFromMm: 100, keptWorthPercent: 30 },
  offers: market.workshop.offers
    .slice(0, 1)
    .map((each) => ({ ...each, id: 'cups', breaks: [{ fromPacks: 4, priceMinor: 700 }] })),
  shelf: [{ need: 'cup', partId: 'cup', amount: 4, worthMinor: 120 }],
  pricing: {
    ...market.workshop.pricing,
    ladder: [1, 6],
    buyingTax: { percent: 20, reclaimed: false },
    workHoursADay: 7,
    ways: market.workshop.pricing.ways
      .slice(0, 1)
      .map((each) => ({ ...each, id: 'stall', givenPriceMinor: 4_500, postPerUnitS: 600 })),
    parcel: {
      paddingMm: 30,
      packingMassG: 200,
      lengthLimitMm: 1_200,
      lengthPlusGirthLimitMm: 3_000,
      weightLimitG: 20_000,
      divisorMm3PerG: 5_000,
      dimensionalAboveMm3: 0,
      sideRoundingMm: 10,
      sideRounding: 'up',
      weightRoundingG: 500
    }
  }
}

const MINOR = [0, 1_000_000_000] as const
const TIME = [0, 1_000_000] as const
const SHARE = [0, 100] as const

/** Path (list items by place), the field as it is named, both bounds, and what else may stand there. */
type Row = readonly [
  path: string,
  field: string,
  bounds: readonly [number, number],
  kind: 'whole' | 'any',
  also?: 'null' | 'left-out'
]

const FIELDS: readonly Row[] = [
  ['saws.0.priceMinor', 'saws.0.priceMinor', MINOR, 'whole', 'null'],
  ['saws.0.salvageMinor', 'saws.0.salvageMinor', MINOR, 'whole'],
  ['saws.0.lifeHoles', 'saws.0.lifeHoles', [1, 1_000_000], 'whole', 'null'],
  ['cutting.kerfMm', 'cutting.kerfMm', [0, 20], 'any'],
  ['cutting.endTrimMm', 'cutting.endTrimMm', [0, 500], 'any'],
  ['cutting.keepFromMm', 'cutting.keepFromMm', [0, 12_000], 'any'],
  ['cutting.keptWorthPercent', 'cutting.keptWorthPercent', SHARE, 'any'],
  ['stock.0.lengthMm', 'stock.bar.lengthMm', [50, 12_000], 'any'],
  ['stock.0.count', 'stock.bar.count', [0, 100_000], 'whole', 'null'],
  ['stock.0.offer.priceMinor', 'stock.bar.offer.priceMinor', MINOR, 'whole', 'null'],
  ['rack.0.lengthMm', 'rack.rest.lengthMm', [1, 12_000], 'any'],
  ['rack.0.worthMinor', 'rack.rest.worthMinor', MINOR, 'whole'],
  ['sheetSetup.webMm', 'sheetSetup.webMm', [0, 200], 'any'],
  ['sheetSetup.edgeMm', 'sheetSetup.edgeMm', [0, 500], 'any'],
  ['sheetSetup.keepFromMm', 'sheetSetup.keepFromMm', [0, 5_000], 'any', 'left-out'],
  ['sheetSetup.keptWorthPercent', 'sheetSetup.keptWorthPercent', SHARE, 'any', 'left-out'],
  ['sheets.0.widthMm', 'sheets.foam.widthMm', [10, 5_000], 'any'],
  ['sheets.0.heightMm', 'sheets.foam.heightMm', [10, 5_000], 'any'],
  ['sheets.0.thicknessMm', 'sheets.foam.thicknessMm', [1, 200], 'any'],
  ['sheets.0.count', 'sheets.foam.count', [0, 100_000], 'whole', 'null'],
  ['sheets.0.offer.priceMinor', 'sheets.foam.offer.priceMinor', MINOR, 'whole', 'null'],
  ['offers.0.packSize', 'offers.cups.packSize', [0.001, 10_000_000], 'any'],
  ['offers.0.offer.priceMinor', 'offers.cups.offer.priceMinor', MINOR, 'whole', 'null'],
  ['offers.0.leastPacks', 'offers.cups.leastPacks', [0, 1_000_000], 'whole'],
  ['offers.0.breaks.0.fromPacks', 'offers.cups.breaks.0.fromPacks', [1, 1_000_000], 'whole'],
  ['offers.0.breaks.0.priceMinor', 'offers.cups.breaks.0.priceMinor', MINOR, 'whole'],
  ['shelf.0.amount', 'shelf.0.amount', [0, 10_000_000], 'any'],
  ['shelf.0.worthMinor', 'shelf.0.worthMinor', MINOR, 'whole', 'left-out'],
  ...Object.keys(shop.times).map((step): Row => [`times.${step}`, `times.${step}`, TIME, 'any']),
  ['pricing.hourlyRateMinor', 'pricing.hourlyRateMinor', MINOR, 'whole'],
  ['pricing.overheadPerHourMinor', 'pricing.overheadPerHourMinor', MINOR, 'whole'],
  ['pricing.marginPercent', 'pricing.marginPercent', [0, 99.99], 'any'],
  ['pricing.taxPercent', 'pricing.taxPercent', SHARE, 'any'],
  ['pricing.scrapPercent', 'pricing.scrapPercent', [0, 90], 'any'],
  ['pricing.priceEnding.everyMinor', 'pricing.priceEnding.everyMinor', [1, 1_000_000], 'whole'],
  ['pricing.priceEnding.endsWithMinor', 'pricing.priceEnding.endsWithMinor', [0, 1_000_000], 'whole'],
  ['pricing.learning.ratePercent', 'pricing.learning.ratePercent', [50, 100], 'any'],
  ['pricing.ladder.1', 'pricing.ladder.1', [1, 1_000], 'whole'],
  ['pricing.priceAgeDays', 'pricing.priceAgeDays', [0, 36_500], 'whole'],
  ['pricing.buyingTax.percent', 'pricing.buyingTax.percent', SHARE, 'any'],
  ['pricing.workHoursADay', 'pricing.workHoursADay', [1, 24], 'any', 'left-out'],
  ['pricing.ways.0.feePercent', 'pricing.ways.stall.feePercent', SHARE, 'any'],
  ['pricing.ways.0.fixedFeeMinor', 'pricing.ways.stall.fixedFeeMinor', MINOR, 'whole'],
  ['pricing.ways.0.postageChargedMinor', 'pricing.ways.stall.postageChargedMinor', MINOR, 'whole'],
  ['pricing.ways.0.postageCostMinor', 'pricing.ways.stall.postageCostMinor', MINOR, 'whole'],
  ['pricing.ways.0.postPerUnitS', 'pricing.ways.stall.postPerUnitS', TIME, 'any', 'left-out'],
  ['pricing.ways.0.fixedPerBatchMinor', 'pricing.ways.stall.fixedPerBatchMinor', MINOR, 'whole'],
  ['pricing.ways.0.givenPriceMinor', 'pricing.ways.stall.givenPriceMinor', MINOR, 'whole', 'null'],
  ['pricing.parcel.paddingMm', 'pricing.parcel.paddingMm', [0, 1_000], 'any'],
  ['pricing.parcel.packingMassG', 'pricing.parcel.packingMassG', [0, 100_000], 'any'],
  ['pricing.parcel.lengthLimitMm', 'pricing.parcel.lengthLimitMm', [1, 100_000], 'any', 'null'],
  ['pricing.parcel.lengthPlusGirthLimitMm', 'pricing.parcel.lengthPlusGirthLimitMm', [1, 100_000], 'any', 'null'],
  ['pricing.parcel.weightLimitG', 'pricing.parcel.weightLimitG', [1, 10_000_000], 'any', 'null'],
  ['pricing.parcel.divisorMm3PerG', 'pricing.parcel.divisorMm3PerG', [1, 1_000_000], 'any', 'null'],
  ['pricing.parcel.dimensionalAboveMm3', 'pricing.parcel.dimensionalAboveMm3', [0, 10_000_000_000], 'any'],
  ['pricing.parcel.sideRoundingMm', 'pricing.parcel.sideRoundingMm', [0, 1_000], 'any'],
  ['pricing.parcel.weightRoundingG', 'pricing.parcel.weightRoundingG', [0, 100_000], 'any']
]

const ROWS = FIELDS.map(([path, field, bounds, kind, also]) => ({ path, field, bounds, kind, also }))

const set = (whole: unknown, [key, ...rest]: readonly string[], value: unknown): unknown => {
  if (key === undefined) return value
  if (Array.isArray(whole)) return whole.map((each, at) => (`${at}` === key ? set(each, rest, value) : each))
  const record = whole as Readonly<Record<string, unknown>>
  const { [key]: before, ...others } = record
  const next = set(before, rest, value)
  return next === undefined ? others : { ...others, [key]: next }
}
const problemsWith = (path: string, value: unknown): readonly DocumentProblem[] => {
  const parsed = parseWorkshop(set(shop, path.split('.'), value))
  return parsed.ok ? [] : parsed.problem
}
const wordsOf = (problem: DocumentProblem): string => problemText(problem, shop.shows, shop.currency)

describe('each figure of a workshop that pricing reads', () => {
  it('is in the table below: no number of the workshop’s prices, times and fees is left out', () => {
    const named = new Set(FIELDS.map(([path]) => path))
    const figures = (value: unknown, path: string): string[] => {
      if (typeof value === 'number') return [path]
      if (typeof value !== 'object' || value === null) return []
      return Object.entries(value).flatMap(([key, each]) => figures(each, `${path}.${key}`))
    }
    const { cutting, stock, rack, sheetSetup, sheets, offers, shelf, times, pricing } = shop
    const all = Object.entries({ cutting, stock, rack, sheetSetup, sheets, offers, shelf, times, pricing })
    const left = all.flatMap(([key, value]) => figures(value, key)).filter((path) => !named.has(path))
    expect(left).toEqual(['pricing.ladder.0'])
    expect(parseWorkshop(shop).ok).toBe(true)
  })

  describe.each(ROWS)('$path', ({ path, field, bounds: [least, most], kind, also }) => {
    it('is taken at both its bounds, and may be nothing or left out only where that says something', () => {
      expect([problemsWith(path, least), problemsWith(path, most)]).toEqual([[], []])
      expect(problemsWith(path, null).length).toBe(also === 'null' ? 0 : 1)
      expect(problemsWith(path, undefined).length).toBe(also === 'left-out' ? 0 : 1)
    })

    it.each([
      ['below the least', least - 1, 'field-out-of-range'],
      ['above the most', most + 1, 'field-out-of-range'],
      ['without end', Number.POSITIVE_INFINITY, 'field-not-finite'],
      ['no number', Number.NaN, 'field-not-finite'],
      ['a text', `${least}`, 'field-wrong-type'],
      ['a list', [least], 'field-wrong-type'],
      ['yes', true, 'field-wrong-type'],
      ...(kind === 'whole' ? [['half a unit', least + 0.5, 'field-not-whole'] as const] : []),
      ...(also === 'null' ? [] : [['nothing', null, 'field-wrong-type'] as const]),
      ...(also === 'left-out' ? [] : [['left out', undefined, 'field-missing'] as const])
    ] as const)('is refused when it is %s, with its path and both bounds', (_what, value, code) => {
      const problems = problemsWith(path, value)
      expect(problems).toHaveLength(1)
      expect(problems[0]).toMatchObject({ code, figures: { field, least, most }, where: { field } })
    })
  })

  it('is refused in words that name the field and its bounds', () => {
    const said = (path: string, value: unknown) => problemsWith(path, value).map(wordsOf).join()
    expect(said('pricing.taxPercent', 120)).toContain('0 to 100')
    expect(said('pricing.taxPercent', undefined)).toContain('number from 0 to 100')
    expect(said('offers.0.offer.priceMinor', 'free')).toContain('from 0 to')
    expect(said('offers.0.leastPacks', 0.5)).toContain('whole numbers from 0 to')
    expect(said('pricing.ways.0.feePercent', 130).toLowerCase()).toContain('fee')
  })

  it('is read with the size of the batch, which is refused the same way', () => {
    for (const [quantity, code] of [
      [0, 'field-out-of-range'],
      [1e9, 'field-out-of-range'],
      [Number.NaN, 'field-not-finite'],
      ['6', 'field-wrong-type'],
      [undefined, 'field-missing'],
      [2.5, 'field-not-whole']
    ] as const) {
      const parsed = parseDesign({ ...market.design, quantity })
      const [problem] = parsed.ok ? [] : parsed.problem
      expect(problem).toMatchObject({ code, figures: { field: 'quantity', least: 1, most: 1_000 } })
    }
  })
})
