import { channelFeet, rolls } from './channel-feet'
import type { StructureFinding } from './codes'
import { TIP_LEAST_DEG } from './limits'
import type { ChannelLoad } from './load'
import type { LoadInput } from './load-input'

const STATES = ['empty', 'filled', 'grown'] as const

/** What is to be minded about one channel's loads, each with its figures, limit and source. */
export function loadFindings(
  input: LoadInput,
  load: ChannelLoad,
  edgesMm: Readonly<Record<(typeof STATES)[number], number | null>>
): readonly StructureFinding[] {
  return [
    ...sagFindings(input, load),
    ...supportFindings(input),
    ...tipFindings(input, load, edgesMm),
    ...growthFindings(input, load)
  ]
}

function sagFindings({ channel, channelWater, water }: LoadInput, load: ChannelLoad): readonly StructureFinding[] {
  const { sag } = load
  if (!sag) return []
  const where = { channelId: channel.id, field: `channels.${channel.id}.supports` }
  const { spanMm, spacingNeededMm, limitMm, longTermMm } = sag
  const found: StructureFinding[] = []
  if (longTermMm > limitMm) {
    found.push({
      code: 'sag-over-limit',
      severity: 'warn',
      figures: { sagMm: longTermMm, limitMm, spanMm, spacingNeededMm },
      where,
      source: 'sag-limit-240'
    })
  }
  const wantedMm = water.stageGapsMm[water.stage]
  const gapMm = channelWater.leastGapMm
  if (gapMm !== null && gapMm >= wantedMm && gapMm - longTermMm < wantedMm) {
    found.push({
      code: 'sag-takes-gap',
      severity: 'warn',
      figures: { sagMm: longTermMm, gapMm, wantedMm },
      where,
      source: 'sag-gap-least'
    })
  }
  return found
}

function supportFindings({ channel, layout }: LoadInput): readonly StructureFinding[] {
  return channel.supports
    .filter((s) => s.atMm < 0 || s.atMm > layout.cutLengthMm)
    .map((s) => {
      const field = `channels.${channel.id}.supports.${s.id}.atMm`
      return {
        code: 'support-off-channel',
        severity: 'stop',
        figures: { atMm: s.atMm, lengthMm: layout.cutLengthMm },
        where: { channelId: channel.id, field },
        fix: { field, value: s.atMm < 0 ? 0 : layout.cutLengthMm }
      }
    })
}

function tipFindings(
  { channel, layout }: LoadInput,
  load: ChannelLoad,
  edgesMm: Readonly<Record<(typeof STATES)[number], number | null>>
): readonly StructureFinding[] {
  const where = { channelId: channel.id, field: `channels.${channel.id}.supports` }
  if (rolls(channel, layout)) {
    return [
      {
        code: 'round-rolls',
        severity: 'warn',
        figures: { diameterMm: layout.section.widthMm },
        where,
        source: 'tipping-angle'
      }
    ]
  }
  for (const state of STATES) {
    const edgeMm = edgesMm[state]
    if (edgeMm !== null && edgeMm >= 0) continue
    const [first] = channelFeet(channel, layout)
    const outsideMm = edgeMm === null ? (first?.lengthMm ?? layout.overallLengthMm) : -edgeMm
    return [{ code: 'tips-over', severity: 'stop', figures: { state, outsideMm }, where, source: 'tipping-angle' }]
  }
  // The worst of the three is told; the others are in the table.
  const state = STATES.reduce((worst, s) => (load.tipDeg[s] < load.tipDeg[worst] ? s : worst))
  const tipDeg = load.tipDeg[state]
  if (tipDeg >= TIP_LEAST_DEG) return []
  return [
    {
      code: 'tips-easily',
      severity: 'warn',
      figures: { state, tipDeg, leastDeg: TIP_LEAST_DEG },
      where,
      source: 'tip-least'
    }
  ]
}

function growthFindings({ channel, layout, sill, size }: LoadInput, load: ChannelLoad): readonly StructureFinding[] {
  const alongSill = channel.heading === 0 || channel.heading === 180
  const roomMm = (alongSill ? size.lengthMm : size.depthMm) - layout.overallLengthMm
  // A channel that is too long already is told of by the layout.
  if (roomMm < 2 * sill.clearanceMm - 0.01 || load.thermalGrowthMm <= roomMm) return []
  const field = `channels.${channel.id}.lengthMm`
  const shorterMm = Math.floor(layout.cutLengthMm - (load.thermalGrowthMm - roomMm))
  return [
    {
      code: 'grows-past-clearance',
      severity: 'warn',
      figures: { growthMm: load.thermalGrowthMm, roomMm },
      where: { channelId: channel.id, field },
      source: 'window-warming',
      ...(shorterMm >= 1 ? { fix: { field, value: shorterMm } } : {})
    }
  ]
}
