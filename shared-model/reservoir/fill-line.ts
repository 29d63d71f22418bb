import type { Channel, ServiceOpening } from '../layout'
import { boreOf } from '../profile'
import { type Basin, riseAt } from './basin'

export interface FillLine {
  /** Above the inside floor at the deepest point. */
  readonly levelMm: number
  readonly wantedMm: number
  readonly cappedByOverflow: boolean
}

/** The level the grower fills to, held down by the lowest overflow. */
export function fillLine(channel: Channel, basin: Basin): FillLine {
  const wantedMm = channel.fillShare * basin.insideHeightMm
  const capMm = overflowLevel(channel, basin)
  return { levelMm: Math.min(wantedMm, capMm), wantedMm, cappedByOverflow: capMm < wantedMm - 1e-9 }
}

/** Level at which the lowest overflow begins to run, or the inside height where there is none. */
export function overflowLevel(channel: Channel, basin: Basin): number {
  let capMm = basin.insideHeightMm
  for (const opening of channel.openings) {
    if (opening.kind !== 'overflow' || opening.face === 'top') continue
    capMm = Math.min(capMm, Math.max(0, lipLevel(opening, channel, basin)))
  }
  return capMm
}

/**
 * Level at the deepest point at which solution reaches an opening's lower edge. An overflow through the bottom is a
 * standpipe: its height is the lip itself.
 */
export function lipLevel(opening: ServiceOpening, channel: Channel, basin: Basin): number {
  const atMm = opening.face === 'datum-end' ? 0 : opening.face === 'far-end' ? channel.lengthMm : opening.atMm
  const lipMm = opening.face === 'bottom' ? opening.heightMm : opening.heightMm - opening.diameterMm / 2
  return lipMm + riseAt(basin, atMm) + riseAcross(opening, basin)
}

/** A side wall stands lower or higher than the centre line, to which levels are told, by half the bore times the fall. */
function riseAcross({ face }: ServiceOpening, { section, slopeAcross }: Basin): number {
  if (face !== 'front' && face !== 'back') return 0
  return ((face === 'back' ? 1 : -1) * slopeAcross * boreOf(section).widthMm) / 2
}
