import { type BillInput, type BillShop, billOf, choosePacks, type PackOffer } from '../../shared-model/bill'
import { type PriceInput, pricePlan } from '../../shared-model/pricing'
import { batch, pack, shop } from '../bill/a-batch'
import { priceInput } from '../pricing/a-price'

export interface BenchRow {
  readonly name: string
  readonly minMs: number
  readonly medianMs: number
  /** Of the answers, so that a faster wrong run shows. */
  readonly checksum: number
}

const RUNS = 9

/** Times of bill and pricing; the data are fixed, so are the checksums. */
export const benchPricing = (): readonly BenchRow[] => [
  row('packs: 1600 pieces from ten offers with breaks', () => packsOf(1600, 10)),
  row('packs: 200 000 pieces from ten offers with breaks', () => packsOf(200_000, 10)),
  row('bill and price of a ten-step ladder to 200 units', ladderOfTen)
]

function row(name: string, work: () => number): BenchRow {
  const times: number[] = []
  let checksum = 0
  for (let run = 0; run < RUNS; run += 1) {
    const start = performance.now()
    checksum = work()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return { name, minMs: times[0] ?? 0, medianMs: times[Math.floor(RUNS / 2)] ?? 0, checksum }
}

function packsOf(need: number, offers: number): number {
  const many = Array.from({ length: offers }, (_, index): PackOffer => {
    const packSize = [1, 6, 10, 12, 24, 25, 50, 72, 100, 144][index % 10] ?? 1
    const price = Math.round(40 * packSize ** 0.9)
    const breaks = [{ fromPacks: 5, priceMinor: Math.round(price * 0.9) }]
    return { ...pack({ id: `o${index}`, need: 'cup', partId: 'cup', packSize }, price), breaks }
  })
  const choice = choosePacks(need, many)
  return choice.ok && choice.value !== null ? choice.value.totalMinor : -1
}

function ladderOfTen(): number {
  const sizes = [1, 2, 4, 8, 12, 24, 48, 96, 144, 200]
  return sizes.reduce((sum, quantity) => sum + priceAt({ ...batch, quantity }, shop, priceInput), 0)
}

function priceAt(input: BillInput, from: BillShop, price: PriceInput): number {
  const bill = billOf(input, from)
  if (!bill.ok) return -1
  return pricePlan({ ...price, bill: bill.value.bill }).plan.ways.reduce((sum, way) => sum + way.priceMinor, 0)
}
