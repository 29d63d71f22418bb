import type { Channel, ChannelLayout } from '../layout'
import { material, modulusLongMPa } from '../materials'
import { insideWidth, netStrength, type Profile } from '../profile'
import { type Megapascals, megapascals, mm, mm4 } from '../units'
import { type Beam, longestSpan, newtonsPerMm, overhangSag, simpleSpanSag } from './beam'
import { GAP_SAG_LEAST_MM, PROUD_LEAST_MM, SAG_SHARE } from './limits'
import type { Sag } from './load'

/**
 * Worst sag of a channel on its supports, at once and after years under load, against the span's share and the air gap.
 * null where it has no support, so that the sill carries it along its length. End closures that stand proud carry it by its
 * ends; it then sags no further than the sill under it.
 *
 * The net section at its widest hole counts over the whole length; the least wall; filled and grown weight evenly spread.
 * `gapToSpareMm`: what the least air gap has over the wanted one.
 */
export function channelSag(
  channel: Channel,
  layout: ChannelLayout,
  profile: Profile,
  grownG: number,
  gapToSpareMm: number | null
): Sag | null {
  const at = supportsAt(channel, layout)
  if (at.length === 0) return null
  const mostMm = channel.supports.length > 0 ? Number.POSITIVE_INFINITY : layout.standsMm
  const short = beamOf(layout, profile, grownG, megapascals(material(profile.material).modulusShortMPa))
  const long = { ...short, modulusMPa: megapascals(modulusLongMPa(profile.material)) }
  const { spanMm, overhangMm, besideMm } = spansOf(at, layout)
  const gapLimitMm = gapToSpareMm === null ? Number.POSITIVE_INFINITY : Math.max(gapToSpareMm, GAP_SAG_LEAST_MM)
  // A cantilever's share goes by twice its length, as the building codes' tables have it.
  const lengthMm = Math.max(spanMm, 2 * overhangMm)
  return {
    spanMm,
    overhangMm,
    shortTermMm: Math.min(mostMm, worst(short, spanMm, overhangMm, besideMm)),
    longTermMm: Math.min(mostMm, worst(long, spanMm, overhangMm, besideMm)),
    limitMm: Math.min(lengthMm / SAG_SHARE, gapLimitMm),
    spacingNeededMm: longestSpan(long, SAG_SHARE, mm(Math.min(gapLimitMm, 1e6)))
  }
}

function beamOf(layout: ChannelLayout, profile: Profile, grownG: number, modulusMPa: Megapascals): Beam {
  const widest = layout.holes.reduce((most, h) => (h.face === 'top' ? Math.max(most, h.diameterMm) : most), 0)
  const leastWall = { ...layout.section, averageWallMm: profile.leastWallMm }
  // A hole wider than the bore takes the whole upper face; the layout stops such a design.
  const net = netStrength(layout.section, mm(Math.min(widest, insideWidth(leastWall))))
  return {
    loadNPerMm: newtonsPerMm(grownG / Math.max(layout.overallLengthMm, 1)),
    modulusMPa,
    secondMomentMm4: mm4(net.ok ? Math.max(net.value.secondMomentMm4, 1) : 1)
  }
}

/** Where it is carried, from the datum end: its supports, or its ends where their closures stand proud of it. */
function supportsAt(channel: Channel, layout: ChannelLayout): readonly number[] {
  if (channel.supports.length === 0) return layout.standsMm > PROUD_LEAST_MM ? [0, layout.cutLengthMm] : []
  return channel.supports.map((s) => Math.min(Math.max(s.atMm, 0), layout.cutLengthMm)).sort((a, b) => a - b)
}

/** Longest span between neighbouring supports, longest overhang with its closure, and the span beside that overhang. */
function spansOf(
  at: readonly number[],
  layout: ChannelLayout
): { readonly spanMm: number; readonly overhangMm: number; readonly besideMm: number | null } {
  const spans = at.slice(1).map((mmAt, i) => mmAt - (at[i] ?? mmAt))
  const addsMm = (layout.overallLengthMm - layout.cutLengthMm) / 2
  const datumMm = (at[0] ?? 0) + addsMm
  const farMm = layout.cutLengthMm - (at.at(-1) ?? 0) + addsMm
  const beside = (datumMm >= farMm ? spans[0] : spans.at(-1)) ?? null
  return { spanMm: spans.length > 0 ? Math.max(...spans) : 0, overhangMm: Math.max(datumMm, farMm), besideMm: beside }
}

function worst(beam: Beam, spanMm: number, overhangMm: number, besideMm: number | null): number {
  const span = simpleSpanSag(beam, mm(spanMm))
  const over = overhangSag(beam, mm(overhangMm), besideMm === null ? null : mm(besideMm))
  return Math.max(span.ok ? span.value : 0, over.ok ? over.value : 0)
}
