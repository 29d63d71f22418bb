import type { BilledCuts, BillInput, BillShop, PackOffer } from '../../shared-model/bill'

/** Two units of one channel each: one 3048 mm bar, two pieces of 900 mm, a 1200 mm offcut kept. Invented prices. */
export const cuts: BilledCuts = {
  profileId: 'post',
  bars: [
    {
      mark: 'A',
      key: 'post-10ft#1',
      stockId: 'post-10ft',
      isOffcut: false,
      lengthMm: 3048,
      trimMm: 10,
      pieces: [
        { pieceId: 'c1/1', mark: '1/1', lengthMm: 900, startMm: 10, state: 'planned' },
        { pieceId: 'c1/2', mark: '1/2', lengthMm: 900, startMm: 913, state: 'planned' }
      ],
      cuts: 2,
      leftoverMm: 1232,
      keep: true,
      costMinor: 2400,
      keptWorthMinor: 485
    }
  ],
  uncut: [],
  keptWorthMinor: 485
}

export const batch: BillInput = {
  quantity: 2,
  profiles: [{ id: 'post', name: 'Square post' }],
  cuts: [cuts],
  rings: null,
  channels: [
    {
      channelId: 'c1',
      closures: [{ partId: 'cap', name: 'Slip cap', count: 2 }],
      cups: [{ partId: 'cup', name: 'Net cup', count: 4 }],
      riserCups: [{ partId: 'cup', name: 'Net cup', count: 1 }],
      plantCollars: [],
      supports: [],
      fittings: [],
      couplings: [],
      joints: [{ id: 'j1', method: 'silicone-neutral', wettedMm: 400, outsideMm: 120 }]
    }
  ],
  amounts: [{ need: 'feed', partId: 'feed-a', name: 'Concentrate', unit: 'mL', amount: 30 }],
  bead: { widthMm: 5, depthMm: 5 },
  primer: false,
  labelsPerUnit: 0,
  packing: []
}

export const pack = (
  part: Partial<PackOffer> & Pick<PackOffer, 'id' | 'need' | 'partId' | 'packSize'>,
  priceMinor: number | null
): PackOffer => ({
  name: part.id,
  offer: { priceMinor, supplier: 'North yard', pricedOn: '2025-05-01', taxInside: false },
  breaks: [],
  leastPacks: 0,
  ...part
})

export const shop: BillShop = {
  currency: 'USD',
  stock: [
    {
      id: 'post-10ft',
      profileId: 'post',
      lengthMm: 3048,
      offer: { priceMinor: 2400, supplier: 'South yard', pricedOn: '2025-05-20', taxInside: false },
      count: null
    }
  ],
  sheets: [],
  offers: [
    pack({ id: 'caps', need: 'closure', partId: 'cap', packSize: 1 }, 150),
    pack({ id: 'cups', need: 'cup', partId: 'cup', packSize: 12 }, 500),
    pack({ id: 'tube', need: 'sealant', partId: '', packSize: 300 }, 700),
    pack({ id: 'bottle', need: 'feed', partId: 'feed-a', packSize: 500 }, 999)
  ],
  shelf: [],
  on: '2025-06-01',
  priceAgeDays: 90
}
