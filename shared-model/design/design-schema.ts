import { STAGES } from '../reservoir'
import { id, length, listOf, minorOrNull, name, num, signedLength, text, whole, yesNo } from './fields'
import {
  closureSchema,
  collarSchema,
  cropSchema,
  cupSchema,
  holeSawSchema,
  plantCollarSchema,
  profileSchema,
  riserSchema
} from './part-schemas'
import { z } from './zod-setup'

export const sillSchema = z.object({
  lengthsMm: listOf(num(50, 20_000), 20, 1),
  depthsMm: listOf(num(20, 3_000), 20, 1),
  clearHeightMm: num(10, 5_000),
  fallAlongMmPerM: num(-100, 100),
  fallAcrossMmPerM: num(-100, 100),
  clearanceMm: num(0, 200),
  loadLimitKg: num(0.1, 10_000).nullable(),
  obstacles: listOf(
    z.object({
      id,
      name,
      xMm: signedLength,
      yMm: signedLength,
      lengthMm: num(1, 20_000),
      depthMm: num(1, 20_000),
      heightMm: num(1, 20_000)
    }),
    50
  )
})

export const placeSchema = z.object({
  where: z.enum(['inside', 'outside', 'unknown']),
  overPublicWay: yesNo,
  exitWindow: yesNo,
  windowOpens: z.enum(['inward', 'outward', 'slides', 'fixed', 'unknown']),
  children: yesNo,
  outletDistanceMm: num(0, 100_000).nullable(),
  liner: z.enum(['none', 'food-contact', 'other', 'unknown']),
  stockOrigin: z.enum(['new', 'reclaimed', 'unknown'])
})

export const channelSchema = z.object({
  id,
  name,
  profileId: id,
  turned: z.boolean(),
  xMm: signedLength,
  yMm: signedLength,
  heading: z.literal([0, 90, 180, 270]),
  lengthMm: num(20, 12_000),
  datumClosureId: id,
  farClosureId: id,
  supports: listOf(
    z.object({ id, atMm: length, alongMm: num(1, 2_000), acrossMm: num(1, 2_000), heightMm: num(0.1, 2_000) }),
    50
  ),
  sites: listOf(z.object({ id, atMm: length, seatId: id, cropId: id.nullable(), locked: z.boolean() }), 400),
  openings: listOf(
    z.object({
      id,
      kind: z.enum(['fill-port', 'overflow', 'drain', 'level-sight', 'vent', 'plug']),
      face: z.enum(['top', 'front', 'back', 'bottom', 'datum-end', 'far-end']),
      atMm: length,
      heightMm: num(0, 1_000),
      diameterMm: num(1, 500),
      sawId: id.nullable(),
      closure: z.enum(['plug', 'grommet', 'bulkhead', 'cap', 'screen', 'clear-strip', 'float-stick', 'none'])
    }),
    50
  ),
  fillShare: num(0, 1)
})

const seatSchema = z.object({
  id,
  name,
  sawId: id,
  stack: listOf(z.object({ kind: z.enum(['riser', 'collar', 'cup', 'plant-collar']), partId: id }), 8)
})

const percentByMass = num(0, 100).exactOptional()

export const waterSchema = z.object({
  stage: z.enum(STAGES),
  stageGapsMm: z.object({
    unrooted: num(-200, 500),
    rooting: num(-200, 500),
    rooted: num(-200, 500),
    full: num(-200, 500)
  }),
  celsius: num(1, 40),
  sourceEcMsPerCm: num(0, 20).nullable(),
  endShare: num(0, 1),
  mediumGPerL: num(0, 2_000).exactOptional(),
  feed: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('none') }),
    z.object({
      kind: z.literal('concentrate'),
      name,
      doseMlPerL: num(0.01, 1_000),
      doseEcMsPerCm: num(0.01, 20),
      targetEcMsPerCm: num(0, 20)
    }),
    z.object({
      kind: z.literal('salts'),
      salts: listOf(
        z.object({
          name,
          gPerL: num(0, 100),
          percent: z.object({
            N: percentByMass,
            P2O5: percentByMass,
            K2O: percentByMass,
            Ca: percentByMass,
            Mg: percentByMass,
            S: percentByMass
          })
        }),
        20
      )
    })
  ])
})

const anchor = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('sill'), edge: z.enum(['left', 'right', 'front', 'back']) }),
  z.object({ kind: z.literal('channel'), channelId: id, end: z.enum(['datum', 'far']) }),
  z.object({ kind: z.literal('site'), channelId: id, siteId: id })
])

/** Keys of bars and pieces are made of ids, so they are longer. */
const madeKey = text(300)
const mark = text(40)

export const atBenchSchema = z.object({
  pins: listOf(z.object({ pieceId: madeKey, barKey: madeKey }), 20_000),
  bars: listOf(
    z.object({
      key: madeKey,
      mark,
      stockId: madeKey,
      isOffcut: z.boolean(),
      profileId: id,
      lengthMm: length,
      trimMm: length,
      pieces: listOf(
        z.object({ pieceId: madeKey, mark, lengthMm: length, state: z.enum(['cut', 'drilled', 'spoiled']) }),
        1_000
      ),
      closed: z.boolean(),
      costMinor: minorOrNull
    }),
    5_000
  )
})

export const MOST_CHANNELS = 120

export const designSchema = z.object({
  schema: z.literal(1),
  id,
  title: text(200),
  number: text(100),
  revision: text(100),
  maker: text(200),
  remarks: text(20_000),
  sill: sillSchema,
  place: placeSchema,
  channels: listOf(channelSchema, MOST_CHANNELS),
  seats: listOf(seatSchema, 200),
  parts: z.object({
    profiles: listOf(profileSchema, 200),
    closures: listOf(closureSchema, 200),
    cups: listOf(cupSchema, 200),
    risers: listOf(riserSchema, 200),
    collars: listOf(collarSchema, 200),
    plantCollars: listOf(plantCollarSchema, 200),
    saws: listOf(holeSawSchema, 300)
  }),
  crops: listOf(cropSchema, 200),
  water: waterSchema,
  growthShare: num(0, 1),
  quantity: whole(1, 1_000),
  dimensions: listOf(z.object({ id, from: anchor, to: anchor, offMm: signedLength.exactOptional() }), 500),
  notes: listOf(z.object({ id, xMm: signedLength, yMm: signedLength, text: text(2_000) }), 500),
  atBench: atBenchSchema.exactOptional()
})
