import { MM_PER_INCH } from '../../units'
import { defaultWorkshop } from '../default-workshop'
import type { Workshop } from '../workshop'
import { owned, priced } from './from-catalogue'

const YARD = 'Gutter supply yard'
const GARDEN = 'Garden wholesale'
const PACKING = 'Packing supply'
const ON = '2026-10-20'

const base = defaultWorkshop({ units: 'in', inchGraduation: 16, decimalMark: '.', paper: 'letter' }, 'USD')

/** A garage workshop that sells what it makes, invented: a drill press and a hand drill, a powered mitre saw. */
export const marketWorkshop: Workshop = {
  ...base,
  id: 'market-workshop',
  title: 'Garage workshop',
  saws: [
    owned('saw-in-3-4', 899, 400),
    owned('saw-in-7-8', 949, 400),
    owned('saw-in-2', 1_499, 300),
    owned('saw-in-2-1-16', 1_549, 300)
  ],
  drills: [
    { id: 'drill-1', name: 'Drill press', kind: 'press' },
    { id: 'drill-2', name: 'Hand drill', kind: 'hand' }
  ],
  cutting: {
    tool: 'power_mitre',
    toolName: 'Mitre saw with a fine metal blade',
    kerfMm: 2.4,
    endTrimMm: 6,
    keepFromMm: 12 * MM_PER_INCH,
    keptWorthPercent: 60,
    joinsAllowed: false
  },
  stock: [bar('downspout-10ft', 120, 2_350), bar('downspout-15ft', 180, 3_395)],
  rack: [
    {
      id: 'off1',
      profileId: 'downspout-plain-4in',
      lengthMm: 26 * MM_PER_INCH,
      worthMinor: 300,
      cameFrom: 'Batch A of the same planter',
      cameOn: '2025-11-08'
    }
  ],
  sheets: [
    {
      id: 'foam-10',
      name: 'EVA foam tile, 24 x 24 in, 3/8 in',
      material: 'eva-foam',
      widthMm: 24 * MM_PER_INCH,
      heightMm: 24 * MM_PER_INCH,
      thicknessMm: 10,
      offer: priced(425, PACKING, ON),
      count: null,
      isOffcut: false
    }
  ],
  offers: [
    pack('caps-12', 'closure', 'end-cap-downspout-4in-plain', 'Downspout end caps, box of 12', 12, 2_640, YARD),
    pack('caps-1', 'closure', 'end-cap-downspout-4in-plain', 'Downspout end cap', 1, 275, YARD),
    pack('cups-25', 'cup', 'cup-2in', 'Slotted cups 2 in, bag of 25', 25, 799, GARDEN),
    pack('cups-100', 'cup', 'cup-2in', 'Slotted cups 2 in, bag of 100', 100, 2_450, GARDEN),
    pack('silicone', 'sealant', 'silicone-neutral', 'Neutral-cure silicone, 10.1 fl oz', 299, 899, YARD),
    pack('plug-22', 'opening-fitting', 'plug-22.2', 'Plug, 7/8 in, bag of 20', 20, 640, PACKING),
    pack('float-19', 'opening-fitting', 'float-stick-19', 'Float stick', 10, 1_150, GARDEN),
    pack('labels', 'label', '', 'Waterproof labels, roll of 100', 100, 1_400, PACKING),
    { ...pack('box', 'packing', '', 'Box and padding', 1, 385, PACKING), breaks: [{ fromPacks: 25, priceMinor: 340 }] }
  ],
  pricing: {
    hourlyRateMinor: 2_200,
    overheadPerHourMinor: 350,
    marginPercent: 25,
    taxPercent: 7,
    taxKind: 'sales-tax-on-top',
    scrapPercent: 3,
    priceEnding: { everyMinor: 100, endsWithMinor: 99 },
    learning: { model: 'none', ratePercent: 100 },
    chargePackRestTo: 'nobody',
    ways: [
      way('way1', 'Own stall', { fixedPerBatchMinor: 4_500 }),
      way('way2', 'Online, posted', {
        feePercent: 6.5,
        fixedFeeMinor: 30,
        feeOnTax: true,
        feeOnPostage: true,
        postageChargedMinor: 995,
        postageCostMinor: 1_240
      }),
      way('way3', 'Wholesale to a shop', { givenPriceMinor: 5_200 })
    ],
    ladder: [1, 2, 4, 6, 8, 12, 18, 24],
    priceAgeDays: 180,
    parcel: {
      ...base.pricing.parcel,
      paddingMm: 38,
      packingMassG: 350,
      lengthLimitMm: 108 * MM_PER_INCH,
      lengthPlusGirthLimitMm: 165 * MM_PER_INCH,
      weightLimitG: 68_000,
      divisorMm3PerG: 5_020,
      dimensionalAboveMm3: 28_316_847,
      sideRoundingMm: MM_PER_INCH,
      weightRoundingG: 454
    }
  }
}

function bar(id: string, lengthIn: number, priceMinor: number): Workshop['stock'][number] {
  return {
    id,
    profileId: 'downspout-plain-4in',
    lengthMm: lengthIn * MM_PER_INCH,
    offer: priced(priceMinor, YARD, ON),
    count: null
  }
}

function pack(
  id: string,
  need: Workshop['offers'][number]['need'],
  partId: string,
  name: string,
  packSize: number,
  priceMinor: number,
  supplier: string
): Workshop['offers'][number] {
  return { id, need, partId, name, packSize, offer: priced(priceMinor, supplier, ON), breaks: [], leastPacks: 1 }
}

type Way = Workshop['pricing']['ways'][number]

function way(id: string, name: string, changes: Partial<Way>): Way {
  return {
    id,
    name,
    feePercent: 0,
    fixedFeeMinor: 0,
    feeOnTax: false,
    feeOnPostage: false,
    postageChargedMinor: 0,
    postageCostMinor: 0,
    fixedPerBatchMinor: 0,
    givenPriceMinor: null,
    ...changes
  }
}
