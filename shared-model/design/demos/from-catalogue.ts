import type { OwnedSaw } from '../../bench'
import { crop } from '../../crops'
import type { PricedOffer } from '../../cutting'
import { type Catalogue, type CatalogueKind, cataloguePart } from '../../parts'
import type { Design } from '../design'

/** A copy of a catalogue part; a demo that names one that is not there is a bug. */
export const part = <K extends CatalogueKind>(kind: K, id: string): Catalogue[K][number] => {
  const found = cataloguePart(kind, id)
  if (found === undefined) throw new Error(`no ${kind} ${id} in the catalogue`)
  return found
}

export const plant = (id: string): Design['crops'][number] => {
  const found = crop(id)
  if (found === undefined) throw new Error(`no crop ${id}`)
  return found
}

export const owned = (sawId: string, priceMinor: number, lifeHoles: number): OwnedSaw => ({
  saw: part('saws', sawId),
  priceMinor,
  salvageMinor: 0,
  lifeHoles
})

/** An invented price. */
export const priced = (priceMinor: number, supplier: string, pricedOn: string, taxInside = false): PricedOffer => ({
  priceMinor,
  supplier,
  pricedOn,
  taxInside
})
