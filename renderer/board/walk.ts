import type { Channel } from '../../shared-model/layout'
import { chooseChannel, chooseSite, type Selection } from '../store/selection'

/** The next thing on the board in either direction: each channel, then its sites; null past the last, so that Tab leaves. */
export function walked(
  channels: readonly Channel[],
  selection: Selection,
  step: 1 | -1
): { readonly selection: Selection; readonly said: string } | null {
  const stops = channels.flatMap((channel, index) => {
    const name = channel.name === '' ? `Channel ${index + 1}` : `Channel ${index + 1}, ${channel.name}`
    return [
      { selection: chooseChannel(channel.id), said: `${name}, ${channel.sites.length} sites` },
      ...[...channel.sites]
        .sort((a, b) => a.atMm - b.atMm)
        .map((site, serial) => ({ selection: chooseSite(channel.id, site.id), said: `Site ${serial + 1} of ${name}` }))
    ]
  })
  const now = stops.findIndex(
    (stop) =>
      stop.selection.channelIds[0] === selection.channelIds[0] && stop.selection.siteIds[0] === selection.siteIds[0]
  )
  if (now === -1) return (step === 1 ? stops[0] : stops.at(-1)) ?? null
  return stops[now + step] ?? null
}
