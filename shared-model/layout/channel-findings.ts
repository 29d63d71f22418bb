import type { EndClosure } from '../parts'
import { flatWidth } from '../profile'
import type { PartIndex } from '../seating'
import type { SillSize } from './channel-layout'
import { closureFindings } from './closure-findings'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'
import type { Sill } from './layout'
import { LEAST_STRIP_MM } from './limits'
import { sillFindings } from './sill-findings'
import { webFindings } from './web-findings'

/**
 * What is to be minded about one channel on its sill: fit, height, webs, face, crop spacing along it, closures, openings.
 * Pure in the channel, its parts and the sill; clashes with other channels come from `betweenChannels`.
 * `closuresOnHand` are named where one of them would fit instead.
 */
export function channelFindings(
  laid: LaidOut,
  sill: Sill,
  size: SillSize,
  index: PartIndex,
  closuresOnHand: readonly EndClosure[]
): readonly LayoutFinding[] {
  return [
    ...sillFindings(laid, sill, size),
    ...heightFindings(laid, sill, index),
    ...webFindings(laid),
    ...faceFindings(laid),
    ...crowdingFindings(laid, index),
    ...closureFindings(laid, index, closuresOnHand),
    ...openingFindings(laid)
  ]
}

function heightFindings({ channel, layout, fits }: LaidOut, sill: Sill, index: PartIndex): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  const floorMm = layout.standsMm + layout.section.averageWallMm
  const topMm = fits.reduce((top, fit) => Math.max(top, floorMm + fit.topMm), layout.standsMm + layout.section.heightMm)
  if (topMm > sill.clearHeightMm) {
    found.push({
      code: 'stack-too-high',
      severity: 'stop',
      figures: { topMm, clearMm: sill.clearHeightMm },
      where: { channelId: channel.id, field: 'sill.clearHeightMm' }
    })
    return found
  }
  let tallest: { readonly crop: string; readonly siteId: string; readonly topMm: number } | undefined
  channel.sites.forEach((site, i) => {
    const crop = site.cropId === null ? undefined : index.crops.get(site.cropId)
    if (!crop) return
    const plantTopMm = floorMm + (fits[i]?.topMm ?? layout.section.heightMm) + crop.plantHeightMm
    if (!tallest || plantTopMm > tallest.topMm) tallest = { crop: crop.name, siteId: site.id, topMm: plantTopMm }
  })
  if (tallest && tallest.topMm > sill.clearHeightMm) {
    found.push({
      code: 'plant-too-high',
      severity: 'warn',
      figures: { crop: tallest.crop, topMm: tallest.topMm, clearMm: sill.clearHeightMm },
      where: { channelId: channel.id, siteId: tallest.siteId, field: 'sill.clearHeightMm' }
    })
  }
  return found
}

function faceFindings({ channel, layout }: LaidOut): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  const round = layout.section.shape === 'round'
  const flatMm = round ? layout.section.widthMm - 2 * layout.section.averageWallMm : flatWidth(layout.section)
  const told = new Set<string>()
  for (const hole of layout.holes) {
    if (hole.face !== 'top') continue
    const site = hole.kind === 'site' ? channel.sites.find((s) => s.id === hole.id) : undefined
    // One line for each diameter: the same saw makes the same mistake all along the channel.
    const key = `${site?.seatId ?? hole.id}`
    if (told.has(key)) continue
    told.add(key)
    const where = site
      ? { channelId: channel.id, siteId: hole.id, seatId: site.seatId, field: `seats.${site.seatId}.sawId` }
      : { channelId: channel.id, openingId: hole.id, field: `channels.${channel.id}.openings.${hole.id}.diameterMm` }
    const stripMm = (flatMm - hole.diameterMm) / 2
    if (hole.diameterMm >= flatMm) {
      found.push({
        code: 'hole-wider-than-face',
        severity: 'stop',
        figures: { holeMm: hole.diameterMm, flatMm },
        where
      })
    } else if (!round && stripMm < LEAST_STRIP_MM) {
      found.push({
        code: 'edge-strip-thin',
        severity: 'warn',
        figures: { stripMm, leastMm: LEAST_STRIP_MM },
        where,
        source: 'web-least'
      })
    }
  }
  return found
}

/** Plants nearer to their neighbour along the channel than the crop's spacing. */
function crowdingFindings({ channel }: LaidOut, index: PartIndex): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  const planted = channel.sites.filter((s) => s.cropId !== null).sort((a, b) => a.atMm - b.atMm)
  const told = new Set<string>()
  planted.forEach((site, i) => {
    const next = planted[i + 1]
    if (!next) return
    const pitchMm = next.atMm - site.atMm
    for (const cropId of [site.cropId, next.cropId]) {
      const crop = cropId === null ? undefined : index.crops.get(cropId)
      if (!crop?.pitchMm || pitchMm >= crop.pitchMm.least - 0.05 || told.has(crop.id)) continue
      told.add(crop.id)
      found.push({
        code: 'plants-crowded',
        severity: 'warn',
        figures: { crop: crop.name, pitchMm, leastMm: crop.pitchMm.least },
        where: { channelId: channel.id, siteId: next.id, field: `channels.${channel.id}.sites.${next.id}.atMm` },
        ...sourceOf(crop.evidence.pitchMm?.source)
      })
    }
  })
  return found
}

const sourceOf = (id: string | undefined): { readonly source?: string } => (id ? { source: id } : {})

function openingFindings({ channel }: LaidOut): readonly LayoutFinding[] {
  if (channel.sites.length === 0) return []
  const kinds = new Set(channel.openings.map((o) => o.kind))
  const found: LayoutFinding[] = []
  const where = { channelId: channel.id, field: `channels.${channel.id}.openings` }
  if (!kinds.has('fill-port')) {
    found.push({
      code: 'no-refill-opening',
      severity: 'note',
      figures: { channel: channel.name },
      where,
      source: 'refill-and-level'
    })
  }
  if (!kinds.has('level-sight')) {
    found.push({
      code: 'no-level-sight',
      severity: 'note',
      figures: { channel: channel.name },
      where,
      source: 'refill-and-level'
    })
  }
  return found
}
