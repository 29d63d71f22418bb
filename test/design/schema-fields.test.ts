import { expect, expectTypeOf, it } from 'vitest'
import type { Design, Workshop } from '../../shared-model/design'
import { DEMOS, parseDesign, parseWorkshop } from '../../shared-model/design'
import type { designSchema } from '../../shared-model/design/design-schema'
import type { workshopSchema } from '../../shared-model/design/workshop-schema'
import type { z } from '../../shared-model/design/zod-setup'

/** Dotted paths of every field of a type, optional ones too; lists are looked into. */
type Fields<T> = T extends readonly (infer Item)[]
  ? Fields<Item>
  : T extends object
    ? { [K in keyof T & string]-?: K | `${K}.${Fields<NonNullable<T[K]>>}` }[keyof T & string]
    : never

// A field that a type has and its schema has not would be dropped in silence when a document is read.
it('knows every field of a design and of a workshop, optional ones too', () => {
  expectTypeOf<Exclude<Fields<Design>, Fields<z.infer<typeof designSchema>>>>().toEqualTypeOf<never>()
  expectTypeOf<Exclude<Fields<Workshop>, Fields<z.infer<typeof workshopSchema>>>>().toEqualTypeOf<never>()
  expectTypeOf<Exclude<Fields<z.infer<typeof designSchema>>, Fields<Design>>>().toEqualTypeOf<never>()
  expectTypeOf<Exclude<Fields<z.infer<typeof workshopSchema>>, Fields<Workshop>>>().toEqualTypeOf<never>()
})

it('keeps the optional fields of a workshop', () => {
  const [, market] = DEMOS
  if (market === undefined) throw new Error('no demo')
  const { workshop } = market
  const full: Workshop = {
    ...workshop,
    sheetSetup: { ...workshop.sheetSetup, keepFromMm: 80, keptWorthPercent: 40 },
    offers: workshop.offers.map((offer) => ({ ...offer, currency: 'USD' })),
    shelf: [{ need: 'label', partId: '', amount: 12, worthMinor: 160 }],
    pricing: {
      ...workshop.pricing,
      buyingTax: { percent: 19, reclaimed: true },
      workHoursADay: 6,
      ways: workshop.pricing.ways.map((way) => ({ ...way, postPerUnitS: 240 })),
      parcel: { ...workshop.pricing.parcel, sideRounding: 'up' }
    }
  }
  expect(parseWorkshop(full)).toEqual({ ok: true, value: full })
  expect(parseDesign(market.design)).toEqual({ ok: true, value: market.design })
})
