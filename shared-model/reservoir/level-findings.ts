import type { Channel } from '../layout'
import { type Basin, riseAt } from './basin'
import type { ChannelWater } from './channel-water'
import type { ReservoirFinding } from './codes'
import { type FillLine, lipLevel } from './fill-line'
import { TILT_TOLD_MM } from './limits'
import type { WaterInput } from './water-input'

/** What a fall of the sill takes, what stands against the seats' edges, and what an opening lets out. */
export function levelFindings(
  input: WaterInput,
  worked: ChannelWater,
  basin: Basin,
  line: FillLine
): readonly ReservoirFinding[] {
  return [
    ...tiltFindings(input.channel, worked, basin),
    ...brimFindings(input, worked),
    ...openingFindings(input.channel, basin, line)
  ]
}

function tiltFindings(channel: Channel, worked: ChannelWater, basin: Basin): readonly ReservoirFinding[] {
  const riseMm = Math.abs(basin.slope) * basin.wetLengthMm
  if (riseMm < TILT_TOLD_MM) return []
  const found: ReservoirFinding[] = []
  const where = { channelId: channel.id, field: 'sill.fallAlongMmPerM' }
  if (worked.leastGapMm !== null && worked.greatestGapMm !== null) {
    const { leastGapMm, greatestGapMm } = worked
    found.push({
      code: 'tilt-takes-gap',
      severity: 'note',
      figures: { riseMm, leastGapMm, greatestGapMm },
      where,
      source: 'bore-volume'
    })
  }
  const overMm = worked.levelMm + riseMm / 2 - worked.insideHeightMm
  if (overMm > 0) {
    found.push({
      code: 'spills-at-low-end',
      severity: 'warn',
      figures: { overMm },
      where: { channelId: channel.id, field: `channels.${channel.id}.fillShare` },
      source: 'bore-volume'
    })
  }
  return found
}

/** Brimful, solution stands against the seats' edges; only a seat with a full ring of contact keeps it in. */
function brimFindings({ channel, fits }: WaterInput, worked: ChannelWater): readonly ReservoirFinding[] {
  const faceMm = worked.insideHeightMm
  const leaking = worked.sites.find((site, i) => site.levelMm > faceMm - 0.5 && !fits[i]?.seals)
  if (!leaking) return []
  return [
    {
      code: 'seat-leaks-when-brimful',
      severity: 'warn',
      figures: { levelMm: leaking.levelMm, faceMm },
      where: { channelId: channel.id, siteId: leaking.siteId, field: `channels.${channel.id}.fillShare` },
      source: 'seat-geometry'
    }
  ]
}

function openingFindings(channel: Channel, basin: Basin, line: FillLine): readonly ReservoirFinding[] {
  const found: ReservoirFinding[] = []
  if (line.cappedByOverflow) {
    const field = `channels.${channel.id}.fillShare`
    found.push({
      code: 'overflow-caps-fill',
      severity: 'note',
      figures: { wantedMm: line.wantedMm, cappedMm: line.levelMm },
      where: { channelId: channel.id, field },
      fix: { field, value: Math.floor((line.levelMm / basin.insideHeightMm) * 1000) / 1000 }
    })
  }
  for (const opening of channel.openings) {
    const open = opening.closure === 'none' || opening.closure === 'screen'
    if (!open || opening.kind === 'overflow' || opening.face === 'top') continue
    const lipMm = opening.face === 'bottom' ? riseAt(basin, opening.atMm) : lipLevel(opening, channel, basin)
    if (lipMm >= line.levelMm) continue
    found.push({
      code: 'opening-below-level',
      severity: 'stop',
      figures: { opening: opening.kind, lipMm, levelMm: line.levelMm },
      where: {
        channelId: channel.id,
        openingId: opening.id,
        field: `channels.${channel.id}.openings.${opening.id}.closure`
      }
    })
  }
  return found
}
