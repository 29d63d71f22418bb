import { DESIGN_SCHEMA } from './design'
import { designSchema } from './design-schema'
import { WORKSHOP_SCHEMA } from './workshop'
import { workshopSchema } from './workshop-schema'
import { z } from './zod-setup'

export interface DocumentJsonSchema {
  readonly name: string
  readonly schema: Readonly<Record<string, unknown>>
}

/**
 * The two documents as JSON Schema (draft 2020-12), made from the parser's own schemas. The parser asks for more than a
 * JSON Schema can say: each id once in its list, each reference led somewhere, measures of a part that agree, and a text
 * of at most 20 MiB nested at most 64 deep. It passes over fields it does not know, and so does the schema.
 */
export const documentJsonSchemas = (): readonly DocumentJsonSchema[] => [
  { name: 'design', schema: jsonSchema(designSchema, 'Sillwright design', DESIGN_SCHEMA, DESIGN_FIELDS) },
  { name: 'workshop', schema: jsonSchema(workshopSchema, 'Sillwright workshop', WORKSHOP_SCHEMA, WORKSHOP_FIELDS) }
]

type Fields = Readonly<Record<string, string>>

const jsonSchema = (schema: z.ZodType, title: string, version: number, fields: Fields) => {
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' })
  const properties = Object.entries(rest.properties ?? {}).map(([name, field]) => {
    const description = fields[name]
    return [name, description === undefined || typeof field === 'boolean' ? field : { description, ...field }] as const
  })
  const description = `Schema ${version}. Lengths are millimetres (Mm in the name), money whole minor units (Minor).`
  return { $schema, title, description, ...rest, properties: Object.fromEntries(properties) }
}

const DESIGN_FIELDS: Fields = {
  schema: 'Version of this format; a newer one than the program knows is opened read-only.',
  id: 'Names the design for good, whatever its title.',
  title: 'Title on the build sheet.',
  number: 'Drawing number.',
  revision: 'Revision of the drawing.',
  maker: 'Who builds it.',
  remarks: 'Free words for the bench.',
  sill: 'The shelf under the window: lengths and depths measured at several places, the least rules; clear height, falls, load limit, obstacles.',
  place: 'Where the sill is and what the place forbids; unknown counts as the careful answer.',
  channels:
    'Cut lengths of profile with their ends, supports, sites and openings; distances along one are from its datum end.',
  seats: 'What sits in a hole, from the hole up, and the saw that makes the hole.',
  parts: 'The design’s own copy of every part it uses, so that the file opens anywhere.',
  crops: 'The design’s own copy of the crops it plants.',
  water: 'Stage of growth and its air gaps, temperature, source water, end of the draw-down, feed.',
  growthShare: 'Share of full growth at which canopies are drawn, 0 to 1; loads count full growth.',
  quantity: 'How many units are built.',
  dimensions: 'Dimensions pinned to the drawing.',
  notes: 'Words pinned to the drawing.',
  atBench: 'Pieces pinned to bars, and what is cut, drilled or spoiled already.'
}

const WORKSHOP_FIELDS: Fields = {
  schema: 'Version of this format; a newer one than the program knows is opened read-only.',
  id: 'Names the workshop for good.',
  title: 'Name of the workshop.',
  shows: 'How figures are shown: units, graduation, decimal mark, paper.',
  currency: 'ISO 4217 code; amounts are whole minor units of it.',
  saws: 'Hole saws owned, with price and life where they are known.',
  drills: 'Drills at the bench: hole saws stay mounted where there are several.',
  cutting: 'The tool that cuts bars, its kerf, the end trim, and the shortest offcut worth keeping.',
  stock: 'Bars on offer: profile, length, price, how many there are (null: as many as wanted).',
  rack: 'Offcuts on hand.',
  sheetSetup: 'Material left between rings and along the edge of a sheet; the smallest offcut worth keeping.',
  sheets: 'Foam sheets on offer or at hand.',
  offers: 'Packs on offer: what need they meet, size, price, breaks, least order.',
  shelf: 'What is left of packs already bought.',
  times: 'Seconds each step of the bench takes, a piece, hole, joint, channel or unit.',
  timesMeasured: 'Which times are the shop’s own, and since when.',
  pricing: 'Hourly rate, overheads, margin, tax, learning, ways of selling, ladder of batches, parcel.',
  parts: 'Parts of the workshop’s own: measured profiles, cups, closures and plant collars.'
}
