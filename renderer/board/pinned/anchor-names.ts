import type { Anchor } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'

const EDGES = {
  left: 'Sill, left end',
  right: 'Sill, right end',
  front: 'Sill, front edge',
  back: 'Sill, at the glass'
}

export interface NamedAnchor {
  readonly value: string
  readonly label: string
  readonly anchor: Anchor
}

/** Everything that a dimension can be pinned to, by name. */
export function namedAnchors(channels: readonly Channel[]): readonly NamedAnchor[] {
  const edges = (['left', 'right', 'front', 'back'] as const).map((edge) => named(EDGES[edge], { kind: 'sill', edge }))
  const parts = channels.flatMap((channel, index) => {
    const name = channel.name === '' ? `Channel ${index + 1}` : `${index + 1} ${channel.name}`
    const sites = [...channel.sites].sort((a, b) => a.atMm - b.atMm)
    return [
      named(`${name}, datum end`, { kind: 'channel', channelId: channel.id, end: 'datum' }),
      named(`${name}, far end`, { kind: 'channel', channelId: channel.id, end: 'far' }),
      ...sites.map((site, serial) =>
        named(`${name}, site ${serial + 1}`, { kind: 'site', channelId: channel.id, siteId: site.id })
      )
    ]
  })
  return [...edges, ...parts]
}

/** The same for the same anchor, however it was made. */
export function anchorKey(anchor: Anchor): string {
  switch (anchor.kind) {
    case 'sill':
      return anchor.edge
    case 'channel':
      return `${anchor.channelId}/${anchor.end}`
    case 'site':
      return `${anchor.channelId}/site/${anchor.siteId}`
  }
}

const named = (label: string, anchor: Anchor): NamedAnchor => ({ value: anchorKey(anchor), label, anchor })
