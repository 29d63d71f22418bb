import { defaultWorkshop } from '../default-workshop'
import type { Workshop } from '../workshop'
import { owned, part, priced } from './from-catalogue'

const MERCHANT = 'Builders’ merchant, Dock Road'
const GARDEN = 'Garden shop'
const HOUSEHOLD = 'Household shop'
const ON = '2026-10-14'

const base = defaultWorkshop({ units: 'mm', mmGraduation: 1, decimalMark: ',', paper: 'a4' }, 'EUR')

/** A workbench in a shed, invented: one hand drill, a mitre box, what was left of an earlier build on the rack. */
export const kitchenWorkshop: Workshop = {
  ...base,
  id: 'kitchen-workshop',
  title: 'Bench in the shed',
  saws: [
    owned('saw-mm-20', 690, 300),
    owned('saw-mm-25', 750, 300),
    owned('saw-mm-48', 990, 250),
    owned('saw-mm-52', 1_050, 250),
    owned('saw-mm-90', 1_690, 200),
    owned('saw-in-3', 1_590, 200),
    owned('saw-in-4', 1_990, 200)
  ],
  cutting: { ...base.cutting, toolName: 'Fine hand saw in a mitre box', keptWorthPercent: 50 },
  stock: [
    {
      id: 'downpipe-80-2500',
      profileId: 'downpipe-80',
      lengthMm: 2_500,
      offer: priced(1_895, MERCHANT, ON, true),
      count: null
    },
    {
      id: 'drain-110-1000',
      profileId: 'en1401-110x3.2',
      lengthMm: 1_000,
      offer: priced(795, MERCHANT, ON, true),
      count: null
    },
    {
      id: 'drain-110-2000',
      profileId: 'en1401-110x3.2',
      lengthMm: 2_000,
      offer: priced(1_290, MERCHANT, ON, true),
      count: null
    }
  ],
  rack: [
    {
      id: 'off1',
      profileId: 'downpipe-80',
      lengthMm: 760,
      worthMinor: 290,
      cameFrom: 'Balcony build',
      cameOn: '2025-09-20'
    },
    {
      id: 'off2',
      profileId: 'en1401-110x3.2',
      lengthMm: 1_290,
      worthMinor: 380,
      cameFrom: 'Drain repair',
      cameOn: '2025-06-02'
    }
  ],
  sheets: [
    {
      id: 'foam-12',
      name: 'EVA foam mat, 12 mm',
      material: 'eva-foam',
      widthMm: 600,
      heightMm: 600,
      thicknessMm: 12,
      offer: priced(890, HOUSEHOLD, ON, true),
      count: null,
      isOffcut: false
    },
    {
      id: 'foam-12-offcut',
      name: 'EVA foam offcut, 12 mm',
      material: 'eva-foam',
      widthMm: 240,
      heightMm: 240,
      thicknessMm: 12,
      offer: priced(60, '', ON, true),
      count: 1,
      isOffcut: true
    }
  ],
  offers: [
    pack('caps-80', 'closure', 'end-cap-downpipe-80', 'End cap, 80 mm square', 1, 245, MERCHANT),
    pack('caps-110', 'closure', 'slip-cap-metric-110', 'Cap, 110 mm', 1, 310, MERCHANT),
    pack('cups-2', 'cup', 'cup-2in', 'Slotted cups 2 in, pack of 10', 10, 490, GARDEN),
    pack('cups-3', 'cup', 'cup-3in', 'Slotted cups 3 in, pack of 5', 5, 450, GARDEN),
    pack('drinking-3', 'riser-cup', 'drinking-cup-3oz', 'Drinking cups 3 oz, pack of 50', 50, 320, HOUSEHOLD),
    pack('cement', 'cement', 'solvent-cement', 'Solvent cement, 125 mL', 125, 690, MERCHANT),
    pack('primer', 'cement', 'primer', 'Cleaner and primer, 125 mL', 125, 640, MERCHANT),
    pack('blocks', 'support', '', 'Saddle blocks, pair', 2, 380, HOUSEHOLD),
    pack('plug-25', 'opening-fitting', 'plug-25', 'Plug, 25 mm', 5, 290, HOUSEHOLD),
    pack('float-20', 'opening-fitting', 'float-stick-20', 'Float stick, 20 mm', 1, 350, GARDEN),
    pack('feed', 'feed', 'herb-feed', 'Herb feed, 250 mL', 250, 750, GARDEN),
    pack('labels', 'label', '', 'Waterproof labels, sheet of 20', 20, 280, HOUSEHOLD),
    pack('box', 'packing', '', 'Box and padding', 1, 420, HOUSEHOLD)
  ],
  pricing: {
    ...base.pricing,
    hourlyRateMinor: 1_800,
    overheadPerHourMinor: 150,
    marginPercent: 15,
    taxPercent: 0,
    taxKind: 'none',
    priceEnding: { everyMinor: 100, endsWithMinor: 0 },
    ways: [
      {
        id: 'way1',
        name: 'For a neighbour',
        feePercent: 0,
        fixedFeeMinor: 0,
        feeOnTax: false,
        feeOnPostage: false,
        postageChargedMinor: 0,
        postageCostMinor: 0,
        fixedPerBatchMinor: 0,
        givenPriceMinor: null
      }
    ]
  },
  parts: { profiles: [part('profiles', 'downpipe-80')], cups: [], closures: [], plantCollars: [] }
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
  return {
    id,
    need,
    partId,
    name,
    packSize,
    offer: priced(priceMinor, supplier, ON, true),
    breaks: [],
    leastPacks: 1
  }
}
