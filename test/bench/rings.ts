import {
  type CircleSheet,
  packCircles,
  planRings,
  type RingNeed,
  reuseCores,
  type SheetStock
} from '../../shared-model/rings'
import { mm } from '../../shared-model/units'
import { type BenchRow, measure } from './measure'

const atOnce = { work: 0, stop: () => false }

/** Times of circles on sheets and of the sheet plan; the data are fixed, so are the checksums. */
export const benchRings = (): readonly BenchRow[] => [
  measure('first count: 76 mm saw on 600 × 400 mm', () => countOf(SMALL, 0)),
  measure('first count: 51 mm saw on 2440 × 1220 mm', () => countOf(LARGE, 0)),
  measure('free search: 20 circles in the record square', () => countOf(SQUARE_20, 1000)),
  measure('sheets at once: 60 collars of three sizes and plates', () => sheetsValue(1)),
  measure('sheets at once: a batch of 24 such', () => sheetsValue(24)),
  measure('core reuse: 1000 collars of five kinds', coresSaved)
]

const SMALL: CircleSheet = { widthMm: 600, heightMm: 400, cutDiameterMm: 76, webMm: 4, edgeMm: 6 }
const LARGE: CircleSheet = { widthMm: 2440, heightMm: 1220, cutDiameterMm: 51, webMm: 3, edgeMm: 5 }
/** Largest circles known of which 20 fit a square of 1 m (see test/reference/rings.jsonl). */
const SQUARE_20: CircleSheet = { widthMm: 1000, heightMm: 1000, cutDiameterMm: 222.764695, webMm: 0, edgeMm: 0 }

const countOf = (sheet: CircleSheet, work: number): number => {
  const packed = packCircles(sheet, { work, stop: () => false })
  return packed.ok ? packed.value.count : -1
}

const collar = (outer: number, inner: number, count: number): RingNeed => ({
  id: `${outer}-${inner}`,
  name: `${outer}-${inner}`,
  outerSawId: `${outer}`,
  innerSawId: `${inner}`,
  cutDiameterMm: outer,
  outsideMm: outer - 4,
  holeMm: inner,
  coreMm: inner - 4,
  count,
  material: 'eva-foam',
  thicknessMm: 10
})

const sheet = (id: string, widthMm: number, heightMm: number, priceMinor: number): SheetStock => ({
  id,
  name: id,
  material: 'eva-foam',
  widthMm,
  heightMm,
  thicknessMm: 10,
  offer: { priceMinor, supplier: '', pricedOn: '', taxInside: true },
  count: null,
  isOffcut: false
})

const sheetsValue = (units: number): number => {
  const plan = planRings({
    needs: [collar(102, 64, 12 * units), collar(76, 51, 28 * units), collar(51, 25, 20 * units)],
    plates: [
      { id: 'end', name: 'end', widthMm: 76, heightMm: 58, count: 4 * units, material: 'eva-foam', thicknessMm: 10 }
    ],
    sheets: [sheet('big', 1000, 600, 1800), sheet('small', 600, 400, 900)],
    setup: { webMm: 4, edgeMm: 6 },
    budget: atOnce
  })
  return plan.ok ? plan.value.value : -1
}

const coresSaved = (): number => {
  const saws = [
    [102, 76],
    [89, 64],
    [76, 51],
    [64, 38],
    [51, 25]
  ] as const
  const collars = saws.map(([outerMm, innerMm], i) => ({ id: `${i}`, outerMm, innerMm, count: 200 }))
  return reuseCores(collars, mm(2), mm(3), { sameSaw: true }).savedSquareMm
}
