import { DEMOS, type Design } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { type BenchRow, measure } from './measure'

const ON = '2026-11-25'

/**
 * Times of a whole evaluation: each demo, and 40 channels with 400 sites. Every run has new channels, as after a move of
 * all of them; the drilling order and the sheet plan stay as long as what they follow from does. Rows `from nothing` keep
 * neither: every run has other times for a tool change and other sheets.
 */
export const benchEvaluating = (): readonly BenchRow[] =>
  DEMOS.flatMap(({ id, design, workshop }) => {
    const large = fortyChannels(design)
    let run = 0
    const fromNothing = (from: Design) => (): number => {
      run += 1
      const toolChangeS = workshop.times.toolChangeS + run / 1024
      const other = { ...workshop, sheets: [...workshop.sheets], times: { ...workshop.times, toolChangeS } }
      const plan = evaluate(fresh(from), other, ON, { cuts: 'left-out' })
      return Math.round(plan.totals.litres * 1000) + plan.totals.plants
    }
    const plants = (from: Design, cuts?: 'left-out') => (): number => {
      const plan = evaluate(fresh(from), workshop, ON, cuts === undefined ? {} : { cuts })
      return Math.round(plan.totals.litres * 1000) + plan.findings.length
    }
    return [
      measure(`evaluate ${id}, with its cut plan`, plants(design)),
      measure(`evaluate ${id}, without the cut plan`, plants(design, 'left-out')),
      measure(`evaluate ${id} drawn out to 40 channels and 400 sites, without the cut plan`, plants(large, 'left-out')),
      measure(`evaluate ${id} from nothing, without the cut plan`, fromNothing(design)),
      measure(
        `evaluate ${id} drawn out to 40 channels and 400 sites from nothing, without the cut plan`,
        fromNothing(large)
      )
    ]
  })

/** The same design with new channels, so that no channel's part kept from an earlier run is found again. */
const fresh = (design: Design): Design => ({ ...design, channels: design.channels.map((channel) => ({ ...channel })) })

/** The demo's channels over and over, ten sites each at their own pitch, on a sill that is long enough. */
const fortyChannels = (design: Design): Design => ({
  ...design,
  sill: { ...design.sill, lengthsMm: [12_000], depthsMm: [5000] },
  channels: Array.from({ length: 40 }, (_, at) => {
    const model = design.channels[at % design.channels.length]
    if (model === undefined) throw new Error('the demo has no channel')
    const site = model.sites[0]
    if (site === undefined) throw new Error('the demo channel has no site')
    const lengthMm = 2400
    const sites = Array.from({ length: 10 }, (_, i) => ({ ...site, id: `c${at}s${i}`, atMm: 150 + 230 * i }))
    return {
      ...model,
      id: `c${at}`,
      lengthMm,
      sites,
      openings: [],
      supports: [],
      xMm: 20 + 2600 * (at % 4),
      yMm: 60 + 120 * at,
      heading: 0
    }
  })
})
