import { type Channel, type ChannelLayout, channelLayout, type Sill, sillSize } from '../../shared-model/layout'
import type { Cup, EndClosure, HoleSaw, Riser } from '../../shared-model/parts'
import { type Profile, sectionOf } from '../../shared-model/profile'
import {
  type ChannelWater,
  channelWater,
  DEFAULT_STAGE_GAPS,
  type ReservoirFinding,
  type WaterPlan
} from '../../shared-model/reservoir'
import {
  channelSeats,
  type PartIndex,
  partIndex,
  type Seat,
  type SeatFit,
  type SeatingFinding
} from '../../shared-model/seating'

/** A small build of invented parts in round figures, so that expectations can be worked by hand. */

/** 76 × 50 mm rectangle, wall 1: bore 74 × 48 mm, square corners. */
export const TUBE: Profile = {
  id: 'tube',
  name: 'Tube 76 × 50',
  family: 'tube',
  shape: 'rectangle',
  widthMm: 76,
  heightMm: 50,
  outsideToleranceMm: 0.2,
  averageWallMm: 1,
  leastWallMm: 1,
  cornerRadiusMm: 0,
  material: 'pvc',
  opaque: true,
  foodContactMark: null,
  evidence: {}
}

/** Round pipe of 110 mm, wall 3.2: bore 103.6 mm. */
export const PIPE: Profile = {
  ...TUBE,
  id: 'pipe',
  name: 'Pipe 110',
  shape: 'round',
  widthMm: 110,
  heightMm: 110,
  averageWallMm: 3.2,
  leastWallMm: 3.2
}

/** A 2 in cup: rim 60, body 49 under it, bottom 35, 50 high with a 2 mm rim. */
export const CUP: Cup = {
  id: 'cup',
  name: 'Cup 2 in',
  rimOutsideMm: 60,
  rimThicknessMm: 2,
  bodyUnderRimMm: 49,
  bottomMm: 35,
  heightMm: 50,
  wallMm: 1,
  flexible: false,
  floodedShare: 0.5,
  material: 'pp',
  massG: 8,
  evidence: {}
}

/** A drinking cup to cut risers from: body 56 under the rim, bottom 40, 102 high: the diameter falls by 1 mm in 6.25. */
export const DRINKING_CUP: Cup = {
  ...CUP,
  id: 'drinking-cup',
  name: 'Drinking cup',
  rimOutsideMm: 64,
  rimThicknessMm: 2,
  bodyUnderRimMm: 56,
  bottomMm: 40,
  heightMm: 102,
  wallMm: 0.5,
  flexible: true,
  floodedShare: 1
}

export const SAW: HoleSaw = {
  id: 'saw-51',
  name: '51 mm',
  diameterMm: 51,
  kerfMm: 2,
  depthMm: 45,
  oversizeMm: 0,
  evidence: {}
}

export const CAP: EndClosure = {
  id: 'cap',
  name: 'Plate',
  kind: 'glued-plate',
  joint: 'solvent-cement',
  holdsOn: { materials: ['pvc'], shape: 'rectangle', widthMm: 76, heightMm: 50, toleranceMm: 0.5 },
  addsLengthMm: 2,
  insideDepthMm: 0,
  outsideDepthMm: 0,
  proudMm: 0,
  material: 'pvc',
  massG: 20,
  evidence: {}
}

export const PIPE_CAP: EndClosure = {
  ...CAP,
  id: 'pipe-cap',
  name: 'Pipe cap',
  holdsOn: { ...CAP.holdsOn, shape: 'round', widthMm: 110, heightMm: 110 }
}

export const SEAT: Seat = {
  id: 'seat',
  name: 'Cup in the face',
  sawId: 'saw-51',
  stack: [{ kind: 'cup', partId: 'cup' }]
}

export const SILL: Sill = {
  lengthsMm: [1210, 1206, 1208],
  depthsMm: [200],
  clearHeightMm: 900,
  fallAlongMmPerM: 0,
  fallAcrossMmPerM: 0,
  clearanceMm: 3,
  loadLimitKg: null,
  obstacles: []
}

export const WATER: WaterPlan = {
  stage: 'rooted',
  stageGapsMm: DEFAULT_STAGE_GAPS,
  celsius: 20,
  sourceEcMsPerCm: 0.3,
  endShare: 0.15,
  feed: { kind: 'none' }
}

export const HERB = {
  id: 'herb',
  name: 'Herb',
  pitchMm: { least: 150, most: 250 },
  canopyMm: 200,
  plantHeightMm: 300,
  dailyUseMl: { least: 40, most: 60 },
  ecMsPerCm: { least: 1, most: 1.6 },
  ph: null,
  grownMassG: 100,
  startLitres: 1,
  edible: true,
  conflicts: [],
  evidence: {}
}

/** 1200 mm of tube in the middle of the sill, six sites at 200 mm. */
export const CHANNEL: Channel = {
  id: 'c1',
  name: 'Front',
  profileId: 'tube',
  turned: false,
  xMm: 4,
  yMm: 100,
  heading: 0,
  lengthMm: 1196,
  datumClosureId: 'cap',
  farClosureId: 'cap',
  supports: [],
  sites: [98, 298, 498, 698, 898, 1098].map((atMm, i) => ({
    id: `s${i + 1}`,
    atMm,
    seatId: 'seat',
    cropId: 'herb',
    locked: false
  })),
  openings: [],
  fillShare: 0.6
}

export const INDEX: PartIndex = partIndex({
  profiles: [TUBE, PIPE],
  closures: [CAP, PIPE_CAP],
  cups: [CUP, DRINKING_CUP],
  saws: [SAW],
  seats: [SEAT],
  crops: [HERB]
})

export interface Built {
  readonly layout: ChannelLayout
  readonly fits: readonly SeatFit[]
  readonly water: ChannelWater
  readonly seatFindings: readonly SeatingFinding[]
  readonly waterFindings: readonly ReservoirFinding[]
}

/** A channel worked out through layout, seats and water; throws where one of them has a problem. */
export function build(channel: Channel, sill: Sill = SILL, water: WaterPlan = WATER, index: PartIndex = INDEX): Built {
  const profile = index.profiles.get(channel.profileId)
  if (!profile) throw new Error('the test names a profile that it does not have')
  const seated = must(channelSeats(channel, sectionOf(profile, channel.turned), index, [...index.saws.values()]))
  const layout = must(channelLayout(channel, seated.fits, index, 1))
  const cupsOnHand = [...index.cups.values()]
  const watered = must(
    channelWater({
      channel,
      layout,
      fits: seated.fits,
      index,
      sill,
      water,
      cupsOnHand,
      sawsOnHand: [...index.saws.values()]
    })
  )
  return {
    layout,
    fits: seated.fits,
    water: watered.water,
    seatFindings: seated.findings,
    waterFindings: watered.findings
  }
}

export const SIZE = must(sillSize(SILL))

/** The value of a result that the test expects to be there. */
export function must<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: { readonly code: string } }
): T {
  if (!result.ok) throw new Error(`problem: ${result.problem.code}`)
  return result.value
}

/** The same parts, with the cup hung in a riser cut from the drinking cup, in a hole of a given saw. */
export function withRiser(cutBelowRimMm: number, holeMm: number): PartIndex {
  const riser: Riser = {
    id: 'riser',
    name: 'Riser',
    cup: DRINKING_CUP,
    opened: { by: 'cut', belowRimMm: cutBelowRimMm }
  }
  const saw: HoleSaw = { ...SAW, id: 'saw-riser', name: 'Riser saw', diameterMm: holeMm }
  const stack = [{ kind: 'riser', partId: 'riser' } as const, ...SEAT.stack]
  return {
    ...INDEX,
    risers: new Map([['riser', riser]]),
    saws: new Map([['saw-riser', saw]]),
    seats: new Map([['seat', { ...SEAT, sawId: 'saw-riser', stack }]])
  }
}
