import type { Design } from '../../shared-model/design'
import { OPENING_NAMES } from '../../shared-model/words'
import { chooseChannel, chooseOpening, choosePinned, chooseSite, type Selection } from '../store/selection'
import { anchorKey, namedAnchors } from './pinned/anchor-names'

interface Stop {
  readonly selection: Selection
  readonly said: string
}

/**
 * The next thing on the board in either direction: each channel, then its sites and openings, then what is pinned; null
 * past the last, so that Tab leaves.
 */
export function walked(
  design: Pick<Design, 'channels' | 'dimensions' | 'notes'>,
  selection: Selection,
  step: 1 | -1
): Stop | null {
  const stops = stopsOf(design)
  const now = stops.findIndex(
    (stop) =>
      stop.selection.channelIds[0] === selection.channelIds[0] &&
      stop.selection.siteIds[0] === selection.siteIds[0] &&
      stop.selection.openingId === selection.openingId &&
      stop.selection.pinnedId === selection.pinnedId
  )
  if (now === -1) return (step === 1 ? stops[0] : stops.at(-1)) ?? null
  return stops[now + step] ?? null
}

function stopsOf({ channels, dimensions, notes }: Pick<Design, 'channels' | 'dimensions' | 'notes'>): readonly Stop[] {
  const inChannels = channels.flatMap((channel, index): readonly Stop[] => {
    const name = channel.name === '' ? `Channel ${index + 1}` : `Channel ${index + 1}, ${channel.name}`
    return [
      { selection: chooseChannel(channel.id), said: `${name}, ${channel.sites.length} sites` },
      ...[...channel.sites]
        .sort((a, b) => a.atMm - b.atMm)
        .map((site, serial) => ({ selection: chooseSite(channel.id, site.id), said: `Site ${serial + 1} of ${name}` })),
      ...channel.openings.map((opening) => ({
        selection: chooseOpening(channel.id, opening.id),
        said: `${OPENING_NAMES[opening.kind]} of ${name}`
      }))
    ]
  })
  const names = new Map(
    dimensions.length === 0 ? [] : namedAnchors(channels).map(({ value, label }): [string, string] => [value, label])
  )
  return [
    ...inChannels,
    ...dimensions.map((each) => ({
      selection: choosePinned(each.id),
      said: `Dimension, ${names.get(anchorKey(each.from)) ?? ''} to ${names.get(anchorKey(each.to)) ?? ''}`
    })),
    ...notes.map((each) => ({ selection: choosePinned(each.id), said: `Note: ${each.text}` }))
  ]
}
