import type { BillLine } from '../bill'
import type { Design, Workshop } from '../design'
import type { ChannelLayout } from '../layout'
import type { EndClosure } from '../parts'
import type { Profile } from '../profile'
import type { ChannelWater } from '../reservoir'
import type { ChannelLoad } from '../structure'
import { grams, inchesFromMm, litres, MM_PER_FOOT, mm, poundsFromGrams, usGallonsFromLitres } from '../units'
import { METALS, materialNames } from './material-names'

export type FactValue = number | string | boolean

const FACTS = [
  'batchHoleCount',
  'bomTags',
  'channelLengthIn',
  'childrenPresent',
  'comEdgeMarginIn',
  'cutCount',
  'cutTool',
  'drillPress',
  'edibleCrop',
  'filledWeightLb',
  'holeCount',
  'holeSawMaxDiaIn',
  'liner',
  'minCutLengthIn',
  'mixVolumeGal',
  'openHoles',
  'openWater',
  'outdoor',
  'outletWithinFt',
  'overhangFraction',
  'place',
  'profileKind',
  'profileShape',
  'reclaimedOrUnknown',
  'reservoirGal',
  'sanding',
  'sillOutside',
  'tipAngleDeg',
  'wallMaterial',
  'wallMaterialIsMetal',
  'wallOpaque',
  'wallThicknessIn',
  'wettedMaterialFoodMark',
  'windowIsExit',
  'windowOpens',
  'windowOverPublicWay'
] as const
export type FactName = (typeof FACTS)[number]

/** Every value a fact may have: one where it is known, several where it is not, none where there is no such thing. */
export type CautionFacts = Readonly<Record<FactName, readonly FactValue[]>>

/** One channel of the plan, as far as the facts need it. */
export interface CautionChannel {
  readonly layout: ChannelLayout
  readonly water: ChannelWater
  readonly load: ChannelLoad
}

/** The facts of a build, one set for each channel: a caution holds when it holds for any of them. */
export const cautionFacts = (
  design: Design,
  workshop: Workshop,
  plan: {
    readonly sillDepthMm: number
    readonly channels: readonly CautionChannel[]
    readonly pieceLengthsMm: readonly number[]
    readonly billNeeds: readonly Pick<BillLine, 'need'>[]
  }
): readonly CautionFacts[] => {
  const whole = factsOfTheWhole(design, workshop, plan)
  return plan.channels.flatMap((planned) => {
    const channel = design.channels.find((each) => each.id === planned.layout.channelId)
    const profile = design.parts.profiles.find((each) => each.id === channel?.profileId)
    if (channel === undefined || profile === undefined) return []
    const cropIds = [...new Set(channel.sites.map(({ cropId }) => cropId))]
    const crops = cropIds.map((cropId) => design.crops.find((crop) => crop.id === cropId))
    return [{ ...whole, ...factsOfChannel(design, planned, profile, plan.sillDepthMm), edibleCrop: edible(crops) }]
  })
}

const factsOfTheWhole = (
  design: Design,
  workshop: Workshop,
  plan: Parameters<typeof cautionFacts>[2]
): CautionFacts => {
  const { place } = design
  const holes = plan.channels.reduce((sum, { layout }) => sum + layout.holes.length, 0)
  const gallons = usGallonsFromLitres(litres(plan.channels.reduce((sum, { water }) => sum + water.litres, 0)))
  const openHoles = design.channels
    .flatMap(({ openings }) => openings)
    .filter(({ closure }) => closure === 'none').length
  const outside = { inside: [false], outside: [true], unknown: [true, false] }[place.where]
  return {
    ...(Object.fromEntries(FACTS.map((fact) => [fact, []])) as unknown as CautionFacts),
    batchHoleCount: [holes * design.quantity],
    bomTags: bomTags(design, plan.billNeeds),
    childrenPresent: yesNo(place.children),
    cutCount: [plan.pieceLengthsMm.length],
    cutTool: [workshop.cutting.tool],
    // With a press and a hand drill at the bench either may be taken up.
    drillPress: workshop.drills.length === 0 ? [false] : workshop.drills.map(({ kind }) => kind === 'press'),
    holeCount: [holes],
    holeSawMaxDiaIn: [inchesFromMm(mm(widestSawMm(design)))],
    liner: { none: [false], 'food-contact': [true], other: [true], unknown: [true, false] }[place.liner],
    minCutLengthIn: plan.pieceLengthsMm.length === 0 ? [] : [inchesFromMm(mm(Math.min(...plan.pieceLengthsMm)))],
    mixVolumeGal: [gallons],
    openHoles: [openHoles],
    openWater: [openHoles > 0],
    outdoor: outside,
    outletWithinFt: [(place.outletDistanceMm ?? 0) / MM_PER_FOOT],
    place: ['sill'],
    reclaimedOrUnknown: [place.stockOrigin !== 'new'],
    reservoirGal: [gallons],
    // Edges are scraped clean in the bench plan, not sanded.
    sanding: [false],
    sillOutside: outside,
    windowIsExit: yesNo(place.exitWindow),
    windowOpens: place.windowOpens === 'unknown' ? [true, false] : [place.windowOpens !== 'fixed'],
    windowOverPublicWay: yesNo(place.overPublicWay)
  }
}

const factsOfChannel = (
  design: Design,
  { layout, load }: CautionChannel,
  profile: Profile,
  sillDepthMm: number
): Partial<CautionFacts> => {
  const { outline } = layout
  const frontMm = Math.max(outline.yMm, 0)
  const backMm = Math.min(outline.yMm + outline.depthMm, sillDepthMm)
  const marginMm = Math.min(load.centre.yMm - frontMm, backMm - load.centre.yMm)
  const overMm = Math.max(0, -outline.yMm)
  const { empty, filled, grown } = load.tipDeg
  const materials = materialNames(profile.material)
  const marked = profile.foodContactMark === true || design.place.liner === 'food-contact'
  return {
    channelLengthIn: [inchesFromMm(mm(layout.overallLengthMm))],
    comEdgeMarginIn: [inchesFromMm(mm(marginMm))],
    filledWeightLb: [poundsFromGrams(grams(load.filledG))],
    overhangFraction: [outline.depthMm > 0 ? overMm / outline.depthMm : 0],
    profileKind: [profile.family.toLowerCase().includes('downspout') ? 'downspout' : profile.family],
    profileShape: [profile.shape === 'round' ? 'round' : 'rectangle'],
    tipAngleDeg: [Math.min(empty, filled, grown)],
    wallMaterial: materials,
    wallMaterialIsMetal: [...new Set(materials.map((material) => METALS.has(material)))],
    wallOpaque: [profile.opaque],
    wallThicknessIn: [inchesFromMm(mm(profile.leastWallMm))],
    wettedMaterialFoodMark: marked ? [true] : [profile.foodContactMark ?? 'unknown']
  }
}

const yesNo = (answer: 'yes' | 'no' | 'unknown'): readonly boolean[] =>
  answer === 'unknown' ? [true, false] : [answer === 'yes']

const edible = (crops: readonly ({ readonly edible: boolean } | undefined)[]): readonly boolean[] =>
  crops.length === 0 ? [true, false] : [...new Set(crops.map((crop) => crop?.edible ?? true))]

const widestSawMm = (design: Design): number => {
  const { parts, seats, channels } = design
  const used = new Set([
    ...seats.map(({ sawId }) => sawId),
    ...parts.collars.flatMap(({ outerSawId, innerSawId }) => [outerSawId, innerSawId]),
    ...channels.flatMap(({ openings }) => openings.map(({ sawId }) => sawId))
  ])
  return Math.max(0, ...parts.saws.filter(({ id }) => used.has(id)).map(({ diameterMm }) => diameterMm))
}

const JOINT_TAGS: Readonly<Record<EndClosure['joint'], readonly string[]>> = {
  // A cemented joint is wiped with cleaner or primer first.
  'solvent-cement': ['solvent_cement', 'primer'],
  'silicone-neutral': ['silicone_neutral'],
  'silicone-acetoxy': ['silicone_acetoxy'],
  gasket: [],
  'push-fit': [],
  tape: []
}

const bomTags = (design: Design, needs: readonly Pick<BillLine, 'need'>[]): readonly string[] => {
  const { parts, seats, channels, water } = design
  const onEnds = new Set(channels.flatMap(({ datumClosureId, farClosureId }) => [datumClosureId, farClosureId]))
  const stacked = new Set(seats.flatMap(({ stack }) => stack.map(({ partId }) => partId)))
  const foam =
    parts.collars.some(({ id, foam: isFoam }) => isFoam && stacked.has(id)) ||
    parts.plantCollars.some(({ id, sawId }) => sawId !== null && stacked.has(id))
  return [
    ...new Set([
      ...parts.closures.filter(({ id }) => onEnds.has(id)).flatMap(({ joint }) => JOINT_TAGS[joint]),
      ...(needs.some(({ need }) => need === 'cement') ? ['solvent_cement', 'primer'] : []),
      ...(foam ? ['foam'] : []),
      ...(water.feed.kind === 'salts' ? ['nutrient_dry'] : [])
    ])
  ]
}
