import { failed, ok, type Result } from '../outcome'
import type { EndClosure } from '../parts'
import { checkProfile, type Profile, sectionOf } from '../profile'
import type { PartIndex, SeatFit } from '../seating'
import type { ChannelLayout, HoleAt } from './channel-layout'
import type { LayoutProblem } from './codes'
import type { Channel, ServiceOpening } from './layout'
import { LEAST_WEB_MM } from './limits'
import { pointOnSill, stripOnSill } from './point-on-sill'
import { outside } from './sites-at-pitch'

/**
 * One channel placed on the sill: overall length with its closures, outlines, holes, webs in order along its upper face,
 * canopies at a share of full growth, and the bore that holds solution. Pure in the channel and its own parts.
 *
 * Fails when its profile or a closure is missing, its length is not 1 mm to 20 m, or its wall leaves no bore.
 */
export function channelLayout(
  channel: Channel,
  fits: readonly SeatFit[],
  index: PartIndex,
  growthShare: number
): Result<ChannelLayout, LayoutProblem> {
  const profile = index.profiles.get(channel.profileId)
  if (!profile) return missing(channel, 'profile', channel.profileId, 'profileId')
  const datum = index.closures.get(channel.datumClosureId)
  if (!datum) return missing(channel, 'end closure', channel.datumClosureId, 'datumClosureId')
  const far = index.closures.get(channel.farClosureId)
  if (!far) return missing(channel, 'end closure', channel.farClosureId, 'farClosureId')
  const wrong = checked(channel, profile)
  if (wrong) return failed(wrong)

  const section = sectionOf(profile, channel.turned)
  const proudMm = Math.max(datum.proudMm, far.proudMm, 0)
  const holes = holesOf(channel, fits, section.widthMm)
  const standsMm = channel.supports.length > 0 ? Math.max(...channel.supports.map((s) => s.heightMm)) : proudMm
  return ok({
    channelId: channel.id,
    section,
    cutLengthMm: channel.lengthMm,
    overallLengthMm: channel.lengthMm + datum.addsLengthMm + far.addsLengthMm,
    outline: stripOnSill(
      channel,
      -datum.addsLengthMm,
      channel.lengthMm + far.addsLengthMm,
      section.widthMm + 2 * proudMm
    ),
    body: stripOnSill(channel, 0, channel.lengthMm, section.widthMm),
    standsMm,
    holes,
    canopies: canopiesOf(channel, index, growthShare),
    webs: websOf(channel, holes, datum, far),
    wetLengthMm: Math.max(0, channel.lengthMm - datum.insideDepthMm - far.insideDepthMm),
    wetFromMm: datum.insideDepthMm
  })
}

/** How far a closure keeps holes away from its cut end: what it covers outside or fills inside, the larger. */
export function closureDepthMm(closure: EndClosure): number {
  return Math.max(closure.insideDepthMm, closure.outsideDepthMm, 0)
}

function checked(channel: Channel, profile: Profile): LayoutProblem | undefined {
  const at = (field: string, problem: LayoutProblem | undefined): LayoutProblem | undefined =>
    problem && { ...problem, where: { channelId: channel.id, field: `channels.${channel.id}.${field}` } }
  return (
    at('lengthMm', outside('channel length', channel.lengthMm, 1, 20_000)) ??
    at('xMm', outside('position along the sill', channel.xMm, -100_000, 100_000)) ??
    at('yMm', outside('position across the sill', channel.yMm, -100_000, 100_000)) ??
    checkProfile(profile)[0]
  )
}

function holesOf(channel: Channel, fits: readonly SeatFit[], widthMm: number): readonly HoleAt[] {
  const sites = channel.sites.map((site, i): HoleAt => {
    const fit = fits[i]?.siteId === site.id ? fits[i] : fits.find((f) => f.siteId === site.id)
    const { xMm, yMm } = pointOnSill(channel, site.atMm)
    return { id: site.id, kind: 'site', face: 'top', atMm: site.atMm, diameterMm: fit?.holeMm ?? 0, xMm, yMm }
  })
  const openings = channel.openings.map((opening): HoleAt => {
    const atMm = alongOf(opening, channel.lengthMm)
    const { xMm, yMm } = pointOnSill(channel, atMm, acrossOf(opening, widthMm))
    return { id: opening.id, kind: 'opening', face: opening.face, atMm, diameterMm: opening.diameterMm, xMm, yMm }
  })
  return [...sites, ...openings]
}

const alongOf = (opening: ServiceOpening, lengthMm: number): number =>
  opening.face === 'datum-end' ? 0 : opening.face === 'far-end' ? lengthMm : opening.atMm

/** Front is to the right of the way the channel runs: the room side of one that runs with the sill. */
const acrossOf = (opening: ServiceOpening, widthMm: number): number =>
  opening.face === 'front' ? -widthMm / 2 : opening.face === 'back' ? widthMm / 2 : 0

function canopiesOf(channel: Channel, index: PartIndex, growthShare: number): ChannelLayout['canopies'] {
  const canopies: { readonly siteId: string; readonly xMm: number; readonly yMm: number; readonly radiusMm: number }[] =
    []
  for (const site of channel.sites) {
    const crop = site.cropId === null ? undefined : index.crops.get(site.cropId)
    if (!crop) continue
    const { xMm, yMm } = pointOnSill(channel, site.atMm)
    canopies.push({ siteId: site.id, xMm, yMm, radiusMm: (crop.canopyMm / 2) * Math.min(1, Math.max(0, growthShare)) })
  }
  return canopies
}

function websOf(channel: Channel, holes: readonly HoleAt[], datum: EndClosure, far: EndClosure): ChannelLayout['webs'] {
  const along = holes.filter((h) => h.face === 'top').sort((a, b) => a.atMm - b.atMm)
  const webs: { readonly fromId: string; readonly toId: string; readonly webMm: number; readonly leastMm: number }[] =
    []
  let fromId = 'datum-end'
  let edgeMm = closureDepthMm(datum)
  for (const hole of along) {
    webs.push({ fromId, toId: hole.id, webMm: hole.atMm - hole.diameterMm / 2 - edgeMm, leastMm: LEAST_WEB_MM })
    fromId = hole.id
    edgeMm = hole.atMm + hole.diameterMm / 2
  }
  if (along.length > 0) {
    webs.push({
      fromId,
      toId: 'far-end',
      webMm: channel.lengthMm - closureDepthMm(far) - edgeMm,
      leastMm: LEAST_WEB_MM
    })
  }
  return webs
}

function missing(
  channel: Channel,
  kind: string,
  partId: string,
  field: string
): { readonly ok: false; readonly problem: LayoutProblem } {
  return failed({
    code: 'channel-part-missing',
    figures: { kind, partId },
    where: { channelId: channel.id, partId, field: `channels.${channel.id}.${field}` }
  })
}
