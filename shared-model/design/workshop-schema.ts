import { MATERIAL_IDS } from '../materials'
import { dateOrEmpty, id, listOf, minor, minorOrNull, name, num, percent, text, whole } from './fields'
import { closureSchema, cupSchema, holeSawSchema, plantCollarSchema, profileSchema } from './part-schemas'
import { z } from './zod-setup'

const offer = z.object({ priceMinor: minorOrNull, supplier: text(200), pricedOn: dateOrEmpty, taxInside: z.boolean() })

const need = z.enum([
  'stock',
  'sheet',
  'closure',
  'cup',
  'riser-cup',
  'plant-collar',
  'sealant',
  'cement',
  'support',
  'opening-fitting',
  'feed',
  'label',
  'packing',
  'medium',
  'coupling'
])
/** A part's id, or empty for the shop's own consumables. */
const partIdOrEmpty = z.string().regex(/^([A-Za-z0-9][A-Za-z0-9._-]{0,95})?$/, {
  error: 'letters, digits, dot, hyphen, underscore, or empty'
})
const currency = z.string().regex(/^[A-Z]{3}$/, { error: 'three capital letters (ISO 4217)' })
const seconds = num(0, 1_000_000)

export const showsSchema = z.object({
  units: z.enum(['in', 'mm']),
  inchGraduation: z.literal([16, 32]),
  mmGraduation: z.literal([0.5, 1]),
  decimalMark: z.enum(['.', ',']),
  paper: z.enum(['letter', 'a4'])
})

export const ownedSawSchema = z.object({
  saw: holeSawSchema,
  priceMinor: minorOrNull,
  salvageMinor: minor,
  lifeHoles: whole(1, 1_000_000).nullable()
})

export const cuttingSchema = z.object({
  tool: z.enum(['hand_saw', 'power_mitre', 'circular', 'jigsaw', 'snips', 'knife', 'pipe_cutter']),
  toolName: name,
  kerfMm: num(0, 20),
  endTrimMm: num(0, 500),
  keepFromMm: num(0, 12_000),
  keptWorthPercent: percent,
  joinsAllowed: z.boolean()
})

export const stockBarSchema = z.object({
  id,
  profileId: id,
  lengthMm: num(50, 12_000),
  offer,
  count: whole(0, 100_000).nullable()
})

export const offcutSchema = z.object({
  id,
  profileId: id,
  lengthMm: num(1, 12_000),
  worthMinor: minor,
  cameFrom: text(200),
  cameOn: dateOrEmpty,
  lot: text(200).exactOptional()
})

export const sheetSchema = z.object({
  id,
  name,
  material: z.enum(MATERIAL_IDS),
  widthMm: num(10, 5_000),
  heightMm: num(10, 5_000),
  thicknessMm: num(1, 200),
  offer,
  count: whole(0, 100_000).nullable(),
  isOffcut: z.boolean()
})

export const sheetSetupSchema = z.object({
  webMm: num(0, 200),
  edgeMm: num(0, 500),
  keepFromMm: num(0, 5_000).exactOptional(),
  keptWorthPercent: percent.exactOptional()
})

export const packOfferSchema = z.object({
  id,
  need,
  partId: partIdOrEmpty,
  name,
  packSize: num(0.001, 10_000_000),
  offer,
  breaks: listOf(z.object({ fromPacks: whole(1, 1_000_000), priceMinor: minor }), 20),
  leastPacks: whole(0, 1_000_000),
  currency: currency.exactOptional()
})

/** Most things on the shelf. */
export const MOST_ON_SHELF = 500

export const shelfSchema = z.object({
  need,
  partId: partIdOrEmpty,
  amount: num(0, 10_000_000),
  worthMinor: minor.exactOptional()
})

export const timesSchema = z.object({
  setUpS: seconds,
  markPerPieceS: seconds,
  cutPerPieceS: seconds,
  stopSettingS: seconds,
  deburrPerEndS: seconds,
  markPerHoleS: seconds,
  pilotPerHoleS: seconds,
  sawPerHoleS: seconds,
  sawPerInchS: seconds,
  toolChangeS: seconds,
  mountS: seconds,
  collarS: seconds,
  boreCupS: seconds,
  cutRiserS: seconds,
  washPerChannelS: seconds,
  jointS: seconds,
  leakTestPerChannelS: seconds,
  labelPerChannelS: seconds,
  packPerUnitS: seconds,
  cureWaitS: seconds,
  leakWaitS: seconds
})

export const wayOfSellingSchema = z.object({
  id,
  name,
  feePercent: percent,
  fixedFeeMinor: minor,
  feeOnTax: z.boolean(),
  feeOnPostage: z.boolean(),
  postageChargedMinor: minor,
  postageCostMinor: minor,
  postPerUnitS: seconds.exactOptional(),
  fixedPerBatchMinor: minor,
  givenPriceMinor: minorOrNull
})

export const parcelSchema = z.object({
  paddingMm: num(0, 1_000),
  packingMassG: num(0, 100_000),
  lengthLimitMm: num(1, 100_000).nullable(),
  lengthPlusGirthLimitMm: num(1, 100_000).nullable(),
  weightLimitG: num(1, 10_000_000).nullable(),
  divisorMm3PerG: num(1, 1_000_000).nullable(),
  dimensionalAboveMm3: num(0, 10_000_000_000),
  sideRoundingMm: num(0, 1_000),
  sideRounding: z.enum(['nearest', 'up', 'down']).exactOptional(),
  weightRoundingG: num(0, 100_000)
})

export const pricingSchema = z.object({
  hourlyRateMinor: minor,
  overheadPerHourMinor: minor,
  marginPercent: num(0, 99.99),
  taxPercent: percent,
  taxKind: z.enum(['none', 'sales-tax-on-top', 'value-added-inside']),
  scrapPercent: num(0, 90),
  priceEnding: z.object({ everyMinor: whole(1, 1_000_000), endsWithMinor: whole(0, 1_000_000) }),
  learning: z.object({ model: z.enum(['none', 'cumulative-average', 'unit']), ratePercent: num(50, 100) }),
  chargePackRestTo: z.enum(['nobody', 'batch']),
  ways: listOf(wayOfSellingSchema, 20),
  ladder: listOf(whole(1, 1_000), 40),
  priceAgeDays: whole(0, 36_500),
  buyingTax: z.object({ percent, reclaimed: z.boolean() }).exactOptional(),
  workHoursADay: num(1, 24).exactOptional(),
  parcel: parcelSchema
})

export const workshopSchema = z.object({
  schema: z.literal(1),
  id,
  title: text(200),
  shows: showsSchema,
  currency,
  saws: listOf(ownedSawSchema, 300),
  drills: listOf(z.object({ id, name, kind: z.enum(['hand', 'press']) }), 10),
  cutting: cuttingSchema,
  stock: listOf(stockBarSchema, 300),
  rack: listOf(offcutSchema, 500),
  sheetSetup: sheetSetupSchema,
  sheets: listOf(sheetSchema, 200),
  offers: listOf(packOfferSchema, 1_000),
  shelf: listOf(shelfSchema, MOST_ON_SHELF),
  times: timesSchema,
  timesMeasured: z.partialRecord(timesSchema.keyof(), dateOrEmpty).exactOptional(),
  pricing: pricingSchema,
  parts: z.object({
    profiles: listOf(profileSchema, 200),
    cups: listOf(cupSchema, 200),
    closures: listOf(closureSchema, 200),
    plantCollars: listOf(plantCollarSchema, 200)
  })
})
