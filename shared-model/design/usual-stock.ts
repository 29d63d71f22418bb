import type { PricedOffer, StockBar } from '../cutting'
import { CATALOGUE } from '../parts'
import type { SheetStock } from '../rings'
import { MM_PER_INCH } from '../units'

const NO_PRICE: PricedOffer = { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }

/** Bars are sold at 10 ft where sizes are in inches and at 3 m where they are metric: from memory, the shop's to change. */
const TEN_FEET_MM = 120 * MM_PER_INCH
const THREE_METRES_MM = 3_000

/** Every profile of the catalogue in its usual bar length, without a price. */
export const usualBars = (): readonly StockBar[] =>
  CATALOGUE.profiles.map((profile) => ({
    id: `bar-${profile.id}`,
    profileId: profile.id,
    lengthMm: isInInches(profile.id) ? TEN_FEET_MM : THREE_METRES_MM,
    offer: NO_PRICE,
    count: null
  }))

/** Foam sheet in the thickness of every collar and cut plant collar, and flat stock for end plates, without a price. */
export const usualSheets = (): readonly SheetStock[] => {
  const foam = [...CATALOGUE.collars, ...CATALOGUE.plantCollars.filter(({ sawId }) => sawId !== null)]
  const plates = CATALOGUE.closures.filter(({ kind }) => kind === 'glued-plate')
  const kinds = new Map<string, SheetStock>()
  const add = (material: SheetStock['material'], thicknessMm: number, widthMm: number, heightMm: number): void => {
    const id = `sheet-${material}-${thicknessMm}`
    const name = `${material === 'eva-foam' ? 'EVA foam' : 'PVC'} sheet, ${thicknessMm} mm`
    kinds.set(id, { id, name, material, widthMm, heightMm, thicknessMm, offer: NO_PRICE, count: null, isOffcut: false })
  }
  for (const { thicknessMm } of foam) add('eva-foam', thicknessMm, 600, 600)
  for (const { material, addsLengthMm } of plates) if (material === 'pvc') add('pvc', addsLengthMm, 600, 300)
  return [...kinds.values()]
}

const INCH_FAMILIES = ['downspout-', 'pvc-', 'post-', 'abs-']

const isInInches = (profileId: string): boolean => INCH_FAMILIES.some((start) => profileId.startsWith(start))
