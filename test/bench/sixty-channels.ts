import { DEMOS, type Design } from '../../shared-model/design'

export const CHANNELS = 60
export const SITES = 2000
const COLUMNS = 2
const PITCH_MM = 100
const LENGTH_MM = 3500
const ROW_MM = 98

/**
 * The kitchen demo's first channel over and over on a sill that is long enough: 60 channels and 2,000 sites of a small
 * crop, so that each stands clear of the next, with the whole of it on one screen.
 */
export function sixtyChannels(): Design {
  const [demo] = DEMOS
  const model = demo?.design.channels[0]
  const site = model?.sites[0]
  const crop = demo?.design.crops.find((each) => each.id === site?.cropId)
  if (demo === undefined || model === undefined || site === undefined || crop === undefined) {
    throw new Error('the demo has no channel with a site and a crop')
  }
  const { design } = demo
  return {
    ...design,
    id: 'sixty-channels',
    title: 'Sixty channels',
    dimensions: [],
    notes: [],
    crops: design.crops.map((each) =>
      each === crop ? { ...each, canopyMm: PITCH_MM - 8, pitchMm: { least: PITCH_MM - 10, most: PITCH_MM + 40 } } : each
    ),
    sill: { ...design.sill, lengthsMm: [7400], depthsMm: [3000], obstacles: [], loadLimitKg: null },
    channels: Array.from({ length: CHANNELS }, (_, at) => ({
      ...model,
      id: `c${at + 1}`,
      name: `Row ${at + 1}`,
      lengthMm: LENGTH_MM,
      openings: [],
      supports: [],
      heading: 0,
      xMm: 30 + 3640 * (at % COLUMNS),
      yMm: 90 + ROW_MM * Math.floor(at / COLUMNS),
      // 40 channels of 33 sites and 20 of 34: 2,000.
      sites: Array.from({ length: at % 3 === 0 ? 34 : 33 }, (_, serial) => ({
        ...site,
        id: `s${serial + 1}`,
        atMm: 80 + PITCH_MM * serial
      }))
    }))
  }
}
