import type { BenchChannel, BenchCollar, BenchHole, BenchInput, BenchRiser } from '../bench'
import type { CutPlan, Piece } from '../cutting'
import type { Design, Workshop } from '../design'
import type { Channel, ChannelLayout } from '../layout'
import type { HoleSaw } from '../parts'
import type { RingPlan } from '../rings'
import type { PartIndex } from '../seating'
import { graduationNm, NM_PER_MM } from '../units'
import { keepEach, keepLast } from './kept'
import type { ChannelPlan } from './plan'
import { PLANT_COLLAR_MATERIAL, stackCounts } from './ring-needs'
import type { SiteTally } from './site-tally'

/** A channel of the design with what the plan says of it so far. */
export interface Planned {
  readonly id: string
  readonly channel: Channel
  readonly plan: ChannelPlan
}

const keptChannels = keepEach<Planned, readonly BenchChannel[]>()
const keptInput = keepLast<BenchInput>()
const keptList = keepLast<readonly BenchChannel[]>()
const keptSaws = keepLast<readonly HoleSaw[]>()
const keptPieces = keepLast<readonly Piece[]>()

/** What the bench needs to know of a plan so far; the same object as long as it says the same. */
export const benchInputOf = (
  design: Design,
  workshop: Workshop,
  index: PartIndex,
  plan: {
    readonly planned: readonly Planned[]
    readonly tallies: readonly SiteTally[]
    readonly pieces: readonly Piece[]
    readonly cuts: readonly CutPlan[]
    readonly rings: RingPlan
  }
): BenchInput => {
  const { planned, tallies, pieces, cuts, rings } = plan
  const benched = keptChannels(planned, inputsOf(index), ({ channel, plan: { mark, layout } }) =>
    benchChannel(channel, mark, layout, index)
  )
  const input: BenchInput = {
    quantity: design.quantity,
    channels: keptList([benched], () => benched.flat()),
    pieces: keptPieces([pieces, cuts], () => piecesCut(pieces, cuts)),
    stopSettingsMm: cuts.flatMap(({ stopSettingsMm }) => stopSettingsMm),
    collars: rings.needs.map((need) => collarOf(rings, need, index)),
    collarSheets: rings.sheets.length,
    risers: risersOf(design, stackCounts(tallies, index)),
    saws: keptSaws([design.parts.saws, workshop.saws], () => everySaw(design, workshop)),
    drills: workshop.drills,
    times: workshop.times,
    cutting: { tool: workshop.cutting.tool, toolName: workshop.cutting.toolName },
    pilotMm: null,
    graduationMm: graduationNm(workshop.shows) / NM_PER_MM
  }
  const { channels, pieces: cut, saws, drills, times, ...figures } = input
  return keptInput([channels, cut, saws, drills, times, JSON.stringify(figures)], () => input)
}

/** The pieces that the cut plan covers. */
const piecesCut = (pieces: readonly Piece[], cuts: readonly CutPlan[]): readonly Piece[] => {
  const uncut = new Set(cuts.flatMap((cut) => cut.uncut.map(({ pieceId }) => pieceId)))
  return pieces.filter(({ id }) => !uncut.has(id))
}

/** What a channel is at the bench does not follow from where it stands on the sill. */
const inputsOf =
  (index: PartIndex) =>
  ({ channel, plan: { mark, seats } }: Planned): readonly unknown[] => {
    const { id, sites, openings, lengthMm, profileId, datumClosureId, farClosureId } = channel
    return [index, mark, seats, id, sites, openings, lengthMm, profileId, datumClosureId, farClosureId]
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

const risersOf = (design: Design, counts: ReadonlyMap<string, number>): readonly BenchRiser[] =>
  design.parts.risers.flatMap((riser): readonly BenchRiser[] => {
    const count = (counts.get(`riser ${riser.id}`) ?? 0) * design.quantity
    if (count === 0) return []
    const { opened, cup } = riser
    const how = opened.by === 'cut' ? opened : { by: opened.by, sawId: opened.sawId }
    return [{ id: riser.id, name: riser.name, material: cup.material, opened: how, count }]
  })

/** The design's own copies first, then what else hangs on the wall. */
const everySaw = (design: Design, workshop: Workshop): readonly HoleSaw[] => {
  const known = new Set(design.parts.saws.map(({ id }) => id))
  return [...design.parts.saws, ...workshop.saws.map(({ saw }) => saw).filter(({ id }) => !known.has(id))]
}
