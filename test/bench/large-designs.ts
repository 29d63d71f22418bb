import type { Design } from '../../shared-model/design'

/** The channels of a demo over and over on a sill that is long enough, sites of its first seat at one pitch, in four columns. */
const drawnOut = (
  design: Design,
  of: { readonly channels: number; readonly sites: number; readonly lengthMm: number; readonly pitchMm: number }
): Design => ({
  ...design,
  sill: { ...design.sill, lengthsMm: [4 * (of.lengthMm + 250)], depthsMm: [3000] },
  channels: Array.from({ length: of.channels }, (_, at) => {
    const model = design.channels[at % design.channels.length]
    const site = model?.sites[0]
    if (model === undefined || site === undefined) throw new Error('the demo has no channel with a site')
    return {
      ...model,
      id: `c${at}`,
      lengthMm: of.lengthMm,
      sites: Array.from({ length: of.sites }, (_, i) => ({ ...site, id: `c${at}s${i}`, atMm: 120 + of.pitchMm * i })),
      openings: [],
      supports: [],
      xMm: 20 + (of.lengthMm + 200) * (at % 4),
      yMm: 60 + 180 * Math.floor(at / 4),
      heading: 0
    }
  })
})

export const fortyChannels = (design: Design): Design =>
  drawnOut(design, { channels: 40, sites: 10, lengthMm: 2400, pitchMm: 230 })

/** 2,040 sites. */
export const sixtyChannels = (design: Design): Design =>
  drawnOut(design, { channels: 60, sites: 34, lengthMm: 3300, pitchMm: 90 })
