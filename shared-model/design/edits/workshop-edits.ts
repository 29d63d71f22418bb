import type { OwnedSaw, StepTimes } from '../../bench'
import type { PackOffer, ShelfItem } from '../../bill'
import type { CuttingSetup, Offcut, PricedOffer, StockBar } from '../../cutting'
import { failed, ok } from '../../outcome'
import type { HoleSaw } from '../../parts'
import type { PricingSetup, WayOfSelling } from '../../pricing'
import type { SheetSetup, SheetStock } from '../../rings'
import { checkAgainst } from '../checked'
import { listOf } from '../fields'
import { nextId } from '../ids'
import type { Shows, Workshop } from '../workshop'
import {
  cuttingSchema,
  MOST_ON_SHELF,
  offcutSchema,
  ownedSawSchema,
  packOfferSchema,
  pricingSchema,
  sheetSchema,
  sheetSetupSchema,
  shelfSchema,
  showsSchema,
  stockBarSchema,
  timesSchema,
  wayOfSellingSchema
} from '../workshop-schema'
import type { z } from '../zod-setup'
import { type Edited, notFound } from './edit'

/** A saw on the wall, with what it cost where that is known; one of the same id is overwritten. */
export const ownSaw = (
  workshop: Workshop,
  saw: HoleSaw,
  cost: Partial<Omit<OwnedSaw, 'saw'>> = {}
): Edited<Workshop> => {
  const owned: OwnedSaw = { saw, priceMinor: null, salvageMinor: 0, lifeHoles: null, ...cost }
  const at = workshop.saws.findIndex((each) => each.saw.id === saw.id)
  const saws = at < 0 ? [...workshop.saws, owned] : workshop.saws.map((each, k) => (k === at ? owned : each))
  return checked(ownedSawSchema, owned, `saws.${saw.id}`, { ...workshop, saws })
}

export const giveUpSaw = (workshop: Workshop, sawId: string): Edited<Workshop> =>
  workshop.saws.some((each) => each.saw.id === sawId)
    ? ok({ ...workshop, saws: workshop.saws.filter((each) => each.saw.id !== sawId) })
    : notFound('saw', sawId)

const NO_PRICE: PricedOffer = { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }

/** A bar length on offer; the last of the list. */
export const addStock = (
  workshop: Workshop,
  bar: Pick<StockBar, 'profileId' | 'lengthMm'> & Partial<StockBar>
): Edited<Workshop> => {
  const made: StockBar = { offer: NO_PRICE, count: null, ...bar, id: nextId('bar', workshop.stock) }
  return checked(stockBarSchema, made, `stock.${made.id}`, { ...workshop, stock: [...workshop.stock, made] })
}

export const editStock = (workshop: Workshop, id: string, changes: Partial<Omit<StockBar, 'id'>>): Edited<Workshop> =>
  edit(workshop, 'stock', stockBarSchema, id, changes)

/** The price of a bar, a sheet or a pack. */
export const setPrice = (
  workshop: Workshop,
  list: 'stock' | 'sheets' | 'offers',
  id: string,
  offer: Partial<PricedOffer>
): Edited<Workshop> => {
  const item = workshop[list].find((each) => each.id === id)
  if (item === undefined) return notFound('offer', id)
  const changes = { offer: { ...item.offer, ...offer } }
  if (list === 'stock') return edit(workshop, 'stock', stockBarSchema, id, changes)
  if (list === 'sheets') return edit(workshop, 'sheets', sheetSchema, id, changes)
  return editOffer(workshop, id, changes)
}

/** An offcut on the rack; the last of the list. */
export const addOffcut = (
  workshop: Workshop,
  offcut: Pick<Offcut, 'profileId' | 'lengthMm'> & Partial<Offcut>
): Edited<Workshop> => {
  const made: Offcut = { worthMinor: 0, cameFrom: '', cameOn: '', ...offcut, id: nextId('off', workshop.rack) }
  return checked(offcutSchema, made, `rack.${made.id}`, { ...workshop, rack: [...workshop.rack, made] })
}

export const editOffcut = (workshop: Workshop, id: string, changes: Partial<Omit<Offcut, 'id'>>): Edited<Workshop> =>
  edit(workshop, 'rack', offcutSchema, id, changes)

export const addSheet = (workshop: Workshop, sheet: Omit<SheetStock, 'id'>): Edited<Workshop> => {
  const made: SheetStock = { ...sheet, id: nextId('sheet', workshop.sheets) }
  return checked(sheetSchema, made, `sheets.${made.id}`, { ...workshop, sheets: [...workshop.sheets, made] })
}

export const editSheet = (workshop: Workshop, id: string, changes: Partial<Omit<SheetStock, 'id'>>): Edited<Workshop> =>
  edit(workshop, 'sheets', sheetSchema, id, changes)

/** A pack on offer; the last of the list. */
export const addOffer = (workshop: Workshop, offer: Omit<PackOffer, 'id'>): Edited<Workshop> => {
  const made: PackOffer = { ...offer, id: nextId('pack', workshop.offers) }
  return checked(packOfferSchema, made, `offers.${made.id}`, { ...workshop, offers: [...workshop.offers, made] })
}

/** A price that is entered is in the shop's own currency, whatever the one before it was in. */
export const editOffer = (
  workshop: Workshop,
  id: string,
  changes: Partial<Omit<PackOffer, 'id'>>
): Edited<Workshop> => {
  const priced = changes.offer?.priceMinor
  const before = workshop.offers.find((each) => each.id === id)
  const isNewPrice = priced !== undefined && before !== undefined && priced !== before.offer.priceMinor
  const { currency, ...own } = changes
  const edited = edit(workshop, 'offers', packOfferSchema, id, isNewPrice ? own : changes)
  return edited.ok && isNewPrice ? inOwnCurrency(edited.value, id) : edited
}

/** Takes an offer's figures as they stand for the shop's own currency. */
export const inOwnCurrency = (workshop: Workshop, id: string): Edited<Workshop> =>
  workshop.offers.some((each) => each.id === id)
    ? ok({
        ...workshop,
        offers: workshop.offers.map((each) => {
          if (each.id !== id) return each
          const { currency, ...own } = each
          return own
        })
      })
    : notFound('offer', id)

/** What is on the shelf, all of it: things go by their place there. */
export const setShelf = (workshop: Workshop, shelf: readonly ShelfItem[]): Edited<Workshop> => {
  for (const [at, item] of shelf.entries()) {
    const outcome = checkAgainst(shelfSchema, item, `shelf.${at}`)
    if (!outcome.ok && outcome.problem[0] !== undefined) return failed(outcome.problem[0])
  }
  return checked(listOf(shelfSchema, MOST_ON_SHELF), shelf, 'shelf', { ...workshop, shelf })
}

/** Takes an item off one of the workshop's lists. */
export const deleteFrom = (
  workshop: Workshop,
  list: 'stock' | 'rack' | 'sheets' | 'offers' | 'drills',
  id: string
): Edited<Workshop> => {
  const items: readonly { readonly id: string }[] = workshop[list]
  return items.some((each) => each.id === id)
    ? ok({ ...workshop, [list]: items.filter((each) => each.id !== id) })
    : notFound(list, id)
}

export const addDrill = (workshop: Workshop, name: string, kind: 'hand' | 'press'): Workshop => ({
  ...workshop,
  drills: [...workshop.drills, { id: nextId('drill-', workshop.drills), name, kind }]
})

export const editShows = (workshop: Workshop, changes: Partial<Shows>): Edited<Workshop> => {
  const shows = { ...workshop.shows, ...changes }
  return checked(showsSchema, shows, 'shows', { ...workshop, shows })
}

export const editCutting = (workshop: Workshop, changes: Partial<CuttingSetup>): Edited<Workshop> => {
  const cutting = { ...workshop.cutting, ...changes }
  return checked(cuttingSchema, cutting, 'cutting', { ...workshop, cutting })
}

export const editSheetSetup = (workshop: Workshop, changes: Partial<SheetSetup>): Edited<Workshop> => {
  const sheetSetup = { ...workshop.sheetSetup, ...changes }
  return checked(sheetSetupSchema, sheetSetup, 'sheetSetup', { ...workshop, sheetSetup })
}

/** Times of the shop's own, measured on this day (ISO). */
export const editTimes = (workshop: Workshop, changes: Partial<StepTimes>, on: string): Edited<Workshop> => {
  const times = { ...workshop.times, ...changes }
  const measured = Object.fromEntries(Object.keys(changes).map((key) => [key, on]))
  const timesMeasured = { ...workshop.timesMeasured, ...measured }
  return checked(timesSchema, times, 'times', { ...workshop, times, timesMeasured })
}

export const editPricing = (workshop: Workshop, changes: Partial<PricingSetup>): Edited<Workshop> => {
  const pricing = { ...workshop.pricing, ...changes }
  return checked(pricingSchema, pricing, 'pricing', { ...workshop, pricing })
}

/** A way of selling without fees; the last of the list. */
export const addWay = (workshop: Workshop, name: string): Workshop => {
  const way: WayOfSelling = {
    id: nextId('way', workshop.pricing.ways),
    name,
    feePercent: 0,
    fixedFeeMinor: 0,
    feeOnTax: false,
    feeOnPostage: false,
    postageChargedMinor: 0,
    postageCostMinor: 0,
    fixedPerBatchMinor: 0,
    givenPriceMinor: null
  }
  return { ...workshop, pricing: { ...workshop.pricing, ways: [...workshop.pricing.ways, way] } }
}

export const editWay = (
  workshop: Workshop,
  id: string,
  changes: Partial<Omit<WayOfSelling, 'id'>>
): Edited<Workshop> => {
  const way = workshop.pricing.ways.find((each) => each.id === id)
  if (way === undefined) return notFound('way of selling', id)
  const made = { ...way, ...changes }
  const ways = workshop.pricing.ways.map((each) => (each === way ? made : each))
  return checked(wayOfSellingSchema, made, `pricing.ways.${id}`, {
    ...workshop,
    pricing: { ...workshop.pricing, ways }
  })
}

export const deleteWay = (workshop: Workshop, id: string): Edited<Workshop> =>
  workshop.pricing.ways.some((each) => each.id === id)
    ? ok({
        ...workshop,
        pricing: { ...workshop.pricing, ways: workshop.pricing.ways.filter((each) => each.id !== id) }
      })
    : notFound('way of selling', id)

type ListName = 'stock' | 'rack' | 'sheets' | 'offers'

const edit = <K extends ListName>(
  workshop: Workshop,
  list: K,
  schema: z.ZodType,
  id: string,
  changes: Partial<Workshop[K][number]>
): Edited<Workshop> => {
  const items: readonly Workshop[K][number][] = workshop[list]
  const item = items.find((each) => each.id === id)
  if (item === undefined) return notFound(list, id)
  const made = { ...item, ...changes }
  return checked(schema, made, `${list}.${id}`, {
    ...workshop,
    [list]: items.map((each) => (each === item ? made : each))
  })
}

const checked = (schema: z.ZodType, value: unknown, at: string, made: Workshop): Edited<Workshop> => {
  const outcome = checkAgainst(schema, value, at)
  if (outcome.ok) return ok(made)
  const [problem] = outcome.problem
  return problem === undefined ? ok(made) : failed(problem)
}
