import { DESIGN_SCHEMA, type Design } from './design'

/**
 * An empty design on a sill of a common size. The sizes are starting values to be measured over; what is not known of
 * the place is `unknown`, which counts as the careful answer.
 */
export const newDesign = (id: string, title = ''): Design => ({
  schema: DESIGN_SCHEMA,
  id,
  title,
  number: '',
  revision: 'A',
  maker: '',
  remarks: '',
  sill: {
    lengthsMm: [1_200],
    depthsMm: [200],
    clearHeightMm: 1_000,
    fallAlongMmPerM: 0,
    fallAcrossMmPerM: 0,
    clearanceMm: 3,
    loadLimitKg: null,
    obstacles: []
  },
  place: {
    where: 'unknown',
    overPublicWay: 'unknown',
    exitWindow: 'unknown',
    windowOpens: 'unknown',
    children: 'unknown',
    outletDistanceMm: null,
    liner: 'unknown',
    stockOrigin: 'unknown'
  },
  channels: [],
  seats: [],
  parts: { profiles: [], closures: [], cups: [], risers: [], collars: [], plantCollars: [], saws: [] },
  crops: [],
  water: {
    stage: 'rooted',
    stageGapsMm: STAGE_GAPS_MM,
    celsius: 20,
    sourceEcMsPerCm: null,
    endShare: 0.15,
    feed: { kind: 'none' }
  },
  growthShare: 1,
  quantity: 1,
  dimensions: [],
  notes: []
})

/**
 * Cup 20 mm in the solution at planting (published 12.7–30 mm for short pots: Kratky 2004, 2009, 2010), just touching
 * while roots come, then 25 mm of air for young plants and 51 mm for large ones (Stephens, UF/IFAS HS510).
 */
const STAGE_GAPS_MM = { unrooted: -20, rooting: 0, rooted: 25, full: 51 } as const
