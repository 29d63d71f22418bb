import type { Channel } from '../layout'
import { boreOf } from '../profile'
import { type Basin, edgeDrop, riseAt } from './basin'
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
    ...acrossFindings(input.channel, worked, basin),
    ...brimFindings(input, worked, basin),
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
      source: 'bore-volume',
      ...fillLower(channel, worked, overMm)
    })
  }
  return found
}

/**
 * Across a channel the surface stands higher along the low side by half the flat of its bore times the fall; towards the
 * crown of a round pipe the bore closes on it, and the pipe holds as much however it is turned.
 */
function acrossFindings(channel: Channel, worked: ChannelWater, basin: Basin): readonly ReservoirFinding[] {
  const bore = boreOf(basin.section)
  const flatMm = Math.max(0, bore.widthMm - 2 * bore.cornerRadiusMm)
  const overMm = worked.levelMm + (Math.abs(basin.slopeAcross) * flatMm) / 2 - worked.insideHeightMm
  if (basin.slopeAcross === 0 || flatMm === 0 || overMm <= 0) return []
  return [
    {
      code: 'spills-over-low-side',
      severity: 'warn',
      figures: { side: basin.slopeAcross > 0 ? 'front' : 'back', overMm },
      where: { channelId: channel.id, field: `channels.${channel.id}.fillShare` },
      source: 'bore-volume',
      ...fillLower(channel, worked, overMm)
    }
  ]
}

/** Filling lower by so much clears it, where solution is left then; downwards to a thousandth. */
function fillLower(
  channel: Channel,
  worked: ChannelWater,
  byMm: number
): { readonly fix?: { readonly field: string; readonly value: number } } {
  const value = Math.floor(((worked.levelMm - byMm) / worked.insideHeightMm) * 1000) / 1000
  return value > 0 ? { fix: { field: `channels.${channel.id}.fillShare`, value } } : {}
}

/** This little below the face's underside counts as brimful, mm. */
const BRIM_MM = 0.5

/** Brimful, solution stands against the seats' edges; only a seat with a full ring of contact keeps it in. */
function brimFindings({ channel, fits }: WaterInput, worked: ChannelWater, basin: Basin): readonly ReservoirFinding[] {
  const faceMm = worked.insideHeightMm
  // The low edge of each hole meets the surface first.
  const atEdge = worked.sites.map((site, i) =>
    site.levelMm > 0 ? site.levelMm + edgeDrop(basin, fits[i]?.holeMm ?? 0) : 0
  )
  const at = worked.sites.findIndex((_, i) => (atEdge[i] ?? 0) > faceMm - BRIM_MM && !fits[i]?.seals)
  const leaking = worked.sites[at]
  const highest = Math.max(...atEdge.filter((_, i) => !fits[i]?.seals))
  if (!leaking) return []
  return [
    {
      code: 'seat-leaks-when-brimful',
      severity: 'warn',
      figures: { levelMm: atEdge[at] ?? leaking.levelMm, faceMm },
      where: { channelId: channel.id, siteId: leaking.siteId, field: `channels.${channel.id}.fillShare` },
      source: 'seat-geometry',
      ...fillLower(channel, worked, highest - (faceMm - BRIM_MM))
    }
  ]
}

/** What is made to stand below the line is closed with what closes it; a port or a vent there is in the wrong place. */
function sealed(
  channel: Channel,
  { id, kind }: Channel['openings'][number]
): { readonly fix?: { readonly field: string; readonly value: string } } {
  const value = kind === 'drain' || kind === 'plug' ? 'plug' : kind === 'level-sight' ? 'clear-strip' : null
  return value === null ? {} : { fix: { field: `channels.${channel.id}.openings.${id}.closure`, value } }
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
      },
      ...sealed(channel, opening)
    })
  }
  return found
}
