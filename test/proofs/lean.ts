import type { Design } from '../../shared-model/design'

/** The design with the parts it uses and no others, so that a change falls on what counts. */
export const lean = (design: Design): Design => {
  const { channels, seats } = design
  // Every id named in the design, then every id named in a part that is: collars name saws, risers name cups.
  const used = new Set(stringsIn([channels, seats]))
  const all = Object.values(design.parts).flat()
  for (const part of [...all, ...all]) if (used.has(part.id)) for (const id of stringsIn(part)) used.add(id)
  const kept = <T extends { readonly id: string }>(list: readonly T[]) => list.filter(({ id }) => used.has(id))
  const { profiles, closures, cups, risers, collars, plantCollars, saws } = design.parts
  return {
    ...design,
    crops: design.crops.slice(0, 3),
    channels: channels.map((channel) => ({
      ...channel,
      sites: channel.sites.map((site) => ({ ...site, cropId: null }))
    })),
    parts: {
      profiles: kept(profiles),
      closures: kept(closures),
      cups: kept(cups),
      risers: kept(risers),
      collars: kept(collars),
      plantCollars: kept(plantCollars),
      saws: kept(saws)
    }
  }
}

const stringsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}
