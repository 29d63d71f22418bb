import type { BenchChannel, BenchCollar, BenchHole, BenchInput, BenchRiser } from '../bench'
import type { CutPlan, Piece } from '../cutting'
import type { Design, Workshop } from '../design'
import type { Channel, ChannelLayout } from '../layout'
import type { HoleSaw } from '../parts'
import type { RingPlan } from '../rings'
import type { PartIndex } from '../seating'
import { graduationNm, NM_PER_MM } from '../units'
import { PLANT_COLLAR_MATERIAL, stackCounts } from './ring-needs'

/** What the bench needs to know of a plan so far. */
export const benchInputOf = (
  design: Design,
  workshop: Workshop,
  index: PartIndex,
  plan: {
    readonly channels: readonly { readonly mark: string; readonly layout: ChannelLayout }[]
    readonly pieces: readonly Piece[]
    readonly cuts: readonly CutPlan[]
    readonly rings: RingPlan
  }
): BenchInput => {
  const uncut = new Set(plan.cuts.flatMap((cut) => cut.uncut.map(({ pieceId }) => pieceId)))
  return {
    quantity: design.quantity,
    channels: plan.channels.flatMap(({ mark, layout }) => {
      const channel = design.channels.find(({ id }) => id === layout.channelId)
      return channel === undefined ? [] : benchChannel(channel, mark, layout, index)
    }),
    pieces: plan.pieces.filter(({ id }) => !uncut.has(id)),
    stopSettingsMm: plan.cuts.flatMap(({ stopSettingsMm }) => stopSettingsMm),
    collars: plan.rings.needs.map((need) => collarOf(plan.rings, need, index)),
    collarSheets: plan.rings.sheets.length,
    risers: risersOf(design),
    saws: everySaw(design, workshop),
    drills: workshop.drills,
    times: workshop.times,
    cutting: { tool: workshop.cutting.tool, toolName: workshop.cutting.toolName },
    pilotMm: null,
    graduationMm: graduationNm(workshop.shows) / NM_PER_MM
  }
}

const benchChannel = (
  channel: Channel,
  mark: string,
  layout: ChannelLayout,
  index: PartIndex
): readonly BenchChannel[] => {
  const profile = index.profiles.get(channel.profileId)
  if (profile === undefined) return []
  // The first hole of an id is the one that counts.
  const widths = new Map(layout.holes.toReversed().map(({ id, diameterMm }) => [id, diameterMm]))
  const names = new Map<string, string>()
  const sitsOf = (seatId: string): string => {
    const known = names.get(seatId)
    if (known !== undefined) return known
    const stack = index.seats.get(seatId)?.stack ?? []
    const sits = stack.map(({ kind, partId }) => partName(kind, partId, index)).join(' + ')
    names.set(seatId, sits)
    return sits
  }
  const sites = channel.sites.map((site): BenchHole => {
    const seat = index.seats.get(site.seatId)
    return {
      id: site.id,
      kind: 'site',
      face: 'top',
      atMm: site.atMm,
      heightMm: null,
      diameterMm: widths.get(site.id) ?? 0,
      sawId: seat?.sawId ?? null,
      alsoSawIds: [],
      sits: sitsOf(site.seatId),
      fitting: null
    }
  })
  const openings = channel.openings.map((opening): BenchHole => {
    const onSide = opening.face !== 'top' && opening.face !== 'bottom'
    return {
      id: opening.id,
      kind: opening.kind,
      face: opening.face,
      atMm: opening.face === 'datum-end' ? 0 : opening.face === 'far-end' ? channel.lengthMm : opening.atMm,
      heightMm: onSide ? opening.heightMm : null,
      diameterMm: opening.diameterMm,
      sawId: opening.sawId,
      alsoSawIds: [],
      sits: [opening.kind, opening.closure]
        .filter((each) => each !== 'none')
        .map(spaced)
        .join(', '),
      fitting: opening.closure === 'none' ? null : spaced(opening.closure)
    }
  })
  const closures = (
    [
      ['datum', channel.datumClosureId],
      ['far', channel.farClosureId]
    ] as const
  ).flatMap(([end, closureId]) => {
    const closure = index.closures.get(closureId)
    return closure === undefined ? [] : [{ end, closureId, name: closure.name, joint: closure.joint }]
  })
  return [
    {
      channelId: channel.id,
      mark,
      material: profile.material,
      shape: profile.shape,
      wallMm: profile.averageWallMm,
      lengthMm: layout.cutLengthMm,
      holes: [...sites, ...openings],
      closures
    }
  ]
}

const partName = (kind: 'riser' | 'collar' | 'cup' | 'plant-collar', partId: string, index: PartIndex): string => {
  const shelf = { riser: index.risers, collar: index.collars, cup: index.cups, 'plant-collar': index.plantCollars }[
    kind
  ]
  return shelf.get(partId)?.name ?? partId
}

const spaced = (words: string): string => words.replaceAll('-', ' ')

const collarOf = (rings: RingPlan, need: RingPlan['needs'][number], index: PartIndex): BenchCollar => {
  const fromCores = rings.fromCores
    .filter(({ needId }) => needId === need.id)
    .map(({ fromNeedId, count, sameSaw }) => ({ needId: fromNeedId, count, sameSaw }))
  const uncut = rings.uncut.filter(({ needId }) => needId === need.id).reduce((sum, { count }) => sum + count, 0)
  const served = fromCores.reduce((sum, { count }) => sum + count, 0)
  return {
    needId: need.id,
    name: need.name,
    material: index.collars.get(need.id)?.material ?? PLANT_COLLAR_MATERIAL,
    thicknessMm: need.thicknessMm,
    outerSawId: need.outerSawId,
    innerSawId: need.innerSawId,
    fromSheet: Math.max(0, need.count - served - uncut),
    fromCores
  }
}

const risersOf = (design: Design): readonly BenchRiser[] => {
  const counts = stackCounts(design)
  return design.parts.risers.flatMap((riser): readonly BenchRiser[] => {
    const count = (counts.get(`riser ${riser.id}`) ?? 0) * design.quantity
    if (count === 0) return []
    const { opened, cup } = riser
    const how = opened.by === 'cut' ? opened : { by: opened.by, sawId: opened.sawId }
    return [{ id: riser.id, name: riser.name, material: cup.material, opened: how, count }]
  })
}

/** The design's own copies first, then what else hangs on the wall. */
const everySaw = (design: Design, workshop: Workshop): readonly HoleSaw[] => {
  const known = new Set(design.parts.saws.map(({ id }) => id))
  return [...design.parts.saws, ...workshop.saws.map(({ saw }) => saw).filter(({ id }) => !known.has(id))]
}
