import type { Bill, BillLine } from '../../shared-model/bill'
import type { PriceInput, PricingSetup, WayOfSelling } from '../../shared-model/pricing'

const line = (need: BillLine['need'], usedMinor: number, restMinor: number): BillLine => ({
  id: need,
  need,
  partId: need,
  name: need,
  unit: 'piece',
  perUnit: 1,
  needed: 4,
  fromShelf: 0,
  bought: 4,
  left: 0,
  packs: [],
  totalMinor: usedMinor + restMinor,
  usedMinor,
  restMinor,
  fromShelfMinor: 0,
  oldestPriceOn: null
})

/** Four units: 60.00 of stock, 20.00 of parts with 5.00 of packs left over. Invented. */
export const bill: Bill = {
  currency: 'USD',
  quantity: 4,
  lines: [line('stock', 6000, 400), line('cup', 2000, 500)],
  totalMinor: 8900,
  usedMinor: 8000,
  restMinor: 900,
  oldestPriceOn: null,
  missing: []
}

export const stall: WayOfSelling = {
  id: 'stall',
  name: 'Own stall',
  feePercent: 0,
  fixedFeeMinor: 0,
  feeOnTax: false,
  feeOnPostage: false,
  postageChargedMinor: 0,
  postageCostMinor: 0,
  fixedPerBatchMinor: 3000,
  givenPriceMinor: null
}

export const online: WayOfSelling = {
  ...stall,
  id: 'online',
  name: 'Online',
  feePercent: 10,
  fixedFeeMinor: 30,
  feeOnPostage: true,
  postageChargedMinor: 800,
  postageCostMinor: 950,
  fixedPerBatchMinor: 0
}

export const setup: PricingSetup = {
  hourlyRateMinor: 2000,
  overheadPerHourMinor: 300,
  marginPercent: 40,
  taxPercent: 0,
  taxKind: 'none',
  scrapPercent: 0,
  priceEnding: { everyMinor: 100, endsWithMinor: 0 },
  learning: { model: 'none', ratePercent: 90 },
  chargePackRestTo: 'nobody',
  ways: [stall, online],
  ladder: [1, 2, 4],
  priceAgeDays: 90,
  parcel: {
    paddingMm: 20,
    packingMassG: 300,
    lengthLimitMm: 1000,
    lengthPlusGirthLimitMm: 2000,
    weightLimitG: 10_000,
    divisorMm3PerG: 5000,
    dimensionalAboveMm3: 0,
    sideRoundingMm: 10,
    weightRoundingG: 500
  }
}

/** Half an hour to set up, three and a half hours to make the four; 16 holes of the 1000 in a saw. */
export const priceInput: PriceInput = {
  currency: 'USD',
  setup,
  bill,
  work: { setUpS: 1800, runS: 12_600 },
  tools: [{ toolId: 'saw', name: 'Hole saw', priceMinor: 2400, salvageMinor: 400, lifeUses: 1000, uses: 16 }],
  unit: { sidesMm: [900, 100, 80], massG: 1500 }
}
