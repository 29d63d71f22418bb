import type { AmountNeed, BillInput, BillShop, ChannelNeeds, CountedPart, JointNeed } from '../bill'
import type { BarsPlanned } from '../cutting'
import type { Design, Workshop } from '../design'
import type { Channel } from '../layout'
import type { EndClosure } from '../parts'
import { boreOf, type Section, sectionOf } from '../profile'
import type { FirstFill } from '../reservoir'
import type { RingPlan } from '../rings'
import type { PartIndex } from '../seating'
import { keepEach } from './kept'
import type { SiteTally } from './site-tally'

/** Bead of sealant in an end joint, mm: common practice, no source. */
const BEAD = { widthMm: 5, depthMm: 5 } as const

/** What the bill needs to know of a plan so far. */
export const billInputOf = (
  design: Design,
  workshop: Workshop,
  index: PartIndex,
  plan: {
    readonly bars: BarsPlanned
    readonly rings: RingPlan
    readonly firstFill: FirstFill
    readonly marks: ReadonlyMap<string, string>
    readonly tallies: readonly SiteTally[]
  }
): BillInput => ({
  quantity: design.quantity,
  profiles: design.parts.profiles.map(({ id, name }) => ({ id, name })),
  cuts: plan.bars.cuts,
  rings: plan.rings,
  channels: channelNeeds(design, index, plan),
  amounts: feedOf(design, plan.firstFill),
  bead: BEAD,
  primer: true,
  labelsPerUnit: design.channels.length,
  // Who sells nothing packs nothing.
  packing: workshop.pricing.ways.length === 0 ? [] : [{ partId: '', name: 'Packing', count: 1 }]
})

export const billShopOf = (workshop: Workshop, on: string): BillShop => ({
  currency: workshop.currency,
  stock: workshop.stock,
  sheets: workshop.sheets,
  offers: workshop.offers,
  shelf: workshop.shelf,
  on,
  priceAgeDays: workshop.pricing.priceAgeDays,
  sheetWorthPercent: workshop.sheetSetup.keptWorthPercent ?? 0,
  ...(workshop.pricing.buyingTax === undefined ? {} : { buyingTax: workshop.pricing.buyingTax })
})

const keptNeeds = keepEach<Channel, ChannelNeeds>()

/** What each channel needs; kept as long as it is made of the same, wherever it stands. */
const channelNeeds = (
  design: Design,
  index: PartIndex,
  plan: {
    readonly bars: BarsPlanned
    readonly marks: ReadonlyMap<string, string>
    readonly tallies: readonly SiteTally[]
  }
): readonly ChannelNeeds[] => {
  const couplings = design.channels.map((channel) => joinsOf(channel, design, plan))
  return keptNeeds(
    design.channels,
    ({ id, profileId, turned, datumClosureId, farClosureId, supports, openings }, at) => [
      index,
      plan.tallies[at],
      couplings[at],
      id,
      profileId,
      turned,
      datumClosureId,
      farClosureId,
      supports,
      openings
    ],
    (channel, at) => needsOfChannel(channel, index, plan.tallies[at], couplings[at] ?? 0)
  )
}

const needsOfChannel = (
  channel: Channel,
  index: PartIndex,
  tally: SiteTally | undefined,
  couplings: number
): ChannelNeeds => {
  const stacks = [...(tally?.seats ?? [])].flatMap(([seatId, sites]) =>
    (index.seats.get(seatId)?.stack ?? []).map(({ kind, partId }) => ({ kind, partId, sites }))
  )
  /** Parts of a kind over all sites. */
  const stacked = (kind: string, partOf: (id: string) => Part | null): readonly CountedPart[] =>
    counted(
      stacks.flatMap((item) => {
        const part = item.kind === kind ? partOf(item.partId) : null
        return part === null ? [] : [{ ...part, count: item.sites }]
      })
    )
  const closures = [channel.datumClosureId, channel.farClosureId]
    .flatMap((id) => index.closures.get(id) ?? [])
    // A glued plate is cut from sheet: the sheet plan has it.
    .filter(({ kind }) => kind !== 'glued-plate')
  const fittings = channel.openings
    .filter(({ closure }) => closure !== 'none')
    .map(({ closure, diameterMm }) => ({ ...fittingPart(closure, diameterMm), count: 1 }))
  return {
    channelId: channel.id,
    closures: counted(closures.map(({ id, name }) => ({ partId: id, name, count: 1 }))),
    cups: stacked('cup', (id) => ({ partId: id, name: index.cups.get(id)?.name ?? id })),
    riserCups: stacked('riser', (id) => {
      const cup = index.risers.get(id)?.cup
      return cup === undefined ? null : { partId: cup.id, name: cup.name }
    }),
    // Those that are cut from sheet have a saw: the sheet plan has them.
    plantCollars: stacked('plant-collar', (id) => {
      const disc = index.plantCollars.get(id)
      return disc?.sawId === null ? { partId: id, name: disc.name } : null
    }),
    supports:
      channel.supports.length === 0 ? [] : [{ partId: '', name: 'Support block', count: channel.supports.length }],
    fittings: counted(fittings),
    couplings: couplings === 0 ? [] : [{ partId: channel.profileId, name: 'Coupling', count: couplings }],
    joints: jointsOf(channel, index)
  }
}

type Part = Omit<CountedPart, 'count'>

/** A fitting is known by what it is and the hole it fills, to a tenth of a millimetre: `grommet-20`, `plug-22.2`. */
export const fittingPart = (closure: string, diameterMm: number): Part => {
  const sizeMm = Math.round(diameterMm * 10) / 10
  const name = `${closure.slice(0, 1).toUpperCase()}${closure.slice(1).replaceAll('-', ' ')}`
  return { partId: `${closure}-${sizeMm}`, name: `${name}, ${sizeMm} mm hole` }
}

/** One entry for each part, by its id. */
const counted = (parts: readonly CountedPart[]): readonly CountedPart[] => {
  const counts = new Map<string, CountedPart>()
  for (const part of parts)
    counts.set(part.partId, { ...part, count: (counts.get(part.partId)?.count ?? 0) + part.count })
  return [...counts.values()]
}

const jointsOf = (channel: Channel, index: PartIndex): readonly JointNeed[] => {
  const profile = index.profiles.get(channel.profileId)
  if (profile === undefined) return []
  const section = sectionOf(profile, channel.turned)
  const aroundMm = perimeter(section.widthMm, section.heightMm, outerRadius(section))
  return (
    [
      ['datum', channel.datumClosureId],
      ['far', channel.farClosureId]
    ] as const
  ).flatMap(([end, id]) => {
    const closure = index.closures.get(id)
    if (closure === undefined) return []
    const wettedMm = goesOver(closure) ? aroundMm : boreAround(section)
    return [{ id: `${channel.id}.${end}`, method: closure.joint, wettedMm, outsideMm: aroundMm / Math.PI }]
  })
}

/** A cap seals on the outside of the profile, a plate or a plug around the bore. */
const goesOver = (closure: EndClosure): boolean => closure.kind === 'slip-cap' || closure.kind === 'moulded-cap'

const boreAround = (section: Section): number => {
  const bore = boreOf(section)
  return perimeter(bore.widthMm, bore.heightMm, bore.cornerRadiusMm)
}

const outerRadius = (section: Section): number =>
  section.shape === 'round' ? section.widthMm / 2 : section.cornerRadiusMm

/** Around a rectangle with rounded corners: 2·(w + h) − 8·r + 2·π·r; a circle where r is half of both sides. */
const perimeter = (widthMm: number, heightMm: number, radiusMm: number): number =>
  2 * (widthMm + heightMm) - (8 - 2 * Math.PI) * Math.min(radiusMm, widthMm / 2, heightMm / 2)

/** Couplings in this channel of one unit: one less than the parts its piece is joined of. */
const joinsOf = (
  channel: Channel,
  design: Design,
  plan: { readonly bars: BarsPlanned; readonly marks: ReadonlyMap<string, string> }
): number => {
  const mark = plan.marks.get(channel.id)
  const first = design.quantity === 1 ? mark : `${mark}/1`
  const joined = plan.bars.findings.find(({ code, figures }) => code === 'piece-joined' && figures.mark === first)
  return joined?.code === 'piece-joined' ? joined.figures.parts - 1 : 0
}

/** Feed for the first fill of one unit. A salt goes by its name. */
const feedOf = (design: Design, fill: FirstFill): readonly AmountNeed[] => {
  const { feed } = design.water
  if (feed.kind === 'concentrate' && fill.concentrateMl !== null)
    return [{ need: 'feed', partId: feedPartId(feed.name), name: feed.name, unit: 'mL', amount: fill.concentrateMl }]
  if (feed.kind !== 'salts') return []
  return fill.salts.map(({ name, grams }) => ({
    need: 'feed',
    partId: feedPartId(name),
    name,
    unit: 'g',
    amount: grams
  }))
}

/** The id that an offer of a feed or salt of this name goes by: `calcium-nitrate`. */
export const feedPartId = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
