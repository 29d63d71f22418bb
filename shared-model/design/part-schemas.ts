import { MATERIAL_IDS } from '../materials'
import { id, length, listOf, name, num, text } from './fields'
import { z } from './zod-setup'

const evidence = z.record(
  z.string().max(60),
  z.object({
    grade: z.enum(['published', 'published-in-part', 'measured', 'common-practice', 'from-memory']),
    source: text(100),
    printed: text(200).exactOptional(),
    on: text(20).exactOptional()
  })
)

const material = z.enum(MATERIAL_IDS)

export const profileSchema = z.object({
  id,
  name,
  family: name,
  shape: z.enum(['rectangle', 'round', 'trunking']),
  widthMm: num(5, 1_000),
  heightMm: num(5, 1_000),
  outsideToleranceMm: num(0, 20),
  averageWallMm: num(0.1, 50),
  leastWallMm: num(0.1, 50),
  cornerRadiusMm: num(0, 200),
  material,
  opaque: z.boolean(),
  foodContactMark: z.boolean().nullable(),
  evidence
})

export const cupSchema = z.object({
  id,
  name,
  rimOutsideMm: num(5, 500),
  rimThicknessMm: num(0, 100),
  bodyUnderRimMm: num(5, 500),
  bottomMm: num(1, 500),
  heightMm: num(5, 500),
  wallMm: num(0.1, 20),
  flexible: z.boolean(),
  floodedShare: num(0, 1),
  material,
  massG: num(0, 2_000),
  evidence
})

export const riserSchema = z.object({
  id,
  name,
  cup: cupSchema,
  opened: z.discriminatedUnion('by', [
    z.object({ by: z.literal('cut'), belowRimMm: num(1, 500) }),
    z.object({ by: z.literal('bore'), sawDiameterMm: num(5, 500), sawId: id })
  ])
})

export const collarSchema = z.object({
  id,
  name,
  outerSawId: id,
  innerSawId: id,
  thicknessMm: num(1, 200),
  foam: z.boolean(),
  squeezeShare: num(0, 0.5),
  material,
  evidence
})

export const plantCollarSchema = z.object({
  id,
  name,
  outsideMm: num(5, 500),
  thicknessMm: num(1, 200),
  sawId: id.nullable(),
  evidence
})

export const holeSawSchema = z.object({
  id,
  name,
  diameterMm: num(5, 500),
  kerfMm: num(0, 10),
  depthMm: num(1, 300),
  oversizeMm: num(-5, 10),
  evidence
})

export const closureSchema = z.object({
  id,
  name,
  kind: z.enum(['slip-cap', 'glued-plate', 'plug', 'moulded-cap']),
  joint: z.enum(['solvent-cement', 'silicone-neutral', 'silicone-acetoxy', 'gasket', 'push-fit', 'tape']),
  holdsOn: z.object({
    materials: z.array(material).max(MATERIAL_IDS.length),
    shape: z.enum(['rectangle', 'round']),
    widthMm: num(5, 1_000).nullable(),
    heightMm: num(5, 1_000).nullable(),
    toleranceMm: num(0, 50)
  }),
  addsLengthMm: num(0, 500),
  insideDepthMm: num(0, 500),
  outsideDepthMm: num(0, 500),
  proudMm: num(0, 100),
  material,
  massG: num(0, 5_000),
  evidence
})

const span = z.object({ least: num(0, 100_000), most: num(0, 100_000) })

export const cropSchema = z.object({
  id,
  name,
  pitchMm: span.nullable(),
  canopyMm: length,
  plantHeightMm: length,
  dailyUseMl: span.nullable(),
  ecMsPerCm: span.nullable(),
  ph: span.nullable(),
  grownMassG: num(0, 50_000),
  startLitres: num(0, 1_000).nullable(),
  edible: z.boolean(),
  conflicts: listOf(text(1_000), 20),
  evidence
})
