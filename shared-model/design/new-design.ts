import { DEFAULT_END_SHARE, DEFAULT_STAGE_GAPS } from '../reservoir'
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
    stageGapsMm: DEFAULT_STAGE_GAPS,
    celsius: 20,
    sourceEcMsPerCm: null,
    endShare: DEFAULT_END_SHARE,
    feed: { kind: 'none' }
  },
  growthShare: 1,
  quantity: 1,
  dimensions: [],
  notes: []
})
