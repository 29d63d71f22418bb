import { closureEnds } from './closure-ends'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'

const SMALL_MM = 0.01

/** Webs along the upper face, holes on each other face, and rims that meet. */
export function webFindings(laid: LaidOut): readonly LayoutFinding[] {
  return [...offChannel(laid), ...alongFace(laid), ...sideFaces(laid), ...rimsMeet(laid)]
}

function offChannel({ channel, layout }: LaidOut): readonly LayoutFinding[] {
  return layout.holes
    .filter((h) => h.face !== 'datum-end' && h.face !== 'far-end' && (h.atMm < 0 || h.atMm > layout.cutLengthMm))
    .map((h) => ({
      code: 'hole-off-channel',
      severity: 'stop',
      figures: { atMm: h.atMm, lengthMm: layout.cutLengthMm },
      where: placeOf(channel.id, h)
    }))
}

function alongFace({ channel, layout }: LaidOut): readonly LayoutFinding[] {
  // The last hole of an id: a thin web is rare, so none is looked up beforehand.
  const holeOf = (id: string) => layout.holes.findLast((hole) => hole.id === id)
  const found: LayoutFinding[] = []
  for (const web of layout.webs) {
    if (web.webMm >= web.leastMm - SMALL_MM) continue
    const hole = holeOf(web.toId) ?? holeOf(web.fromId)
    if (!hole) continue
    const where = placeOf(channel.id, hole)
    const atClosure = web.fromId === 'datum-end' || web.toId === 'far-end'
    // Moving clears it where there is room on the other side: away from the closure by what is short.
    const shortMm = web.leastMm - web.webMm
    const value = web.fromId === 'datum-end' ? hole.atMm + shortMm : hole.atMm - shortMm
    const fix =
      atClosure && where.field && givesWay(layout, web, hole.id, value, shortMm)
        ? { fix: { field: where.field, value } }
        : {}
    if (web.webMm >= 0) {
      found.push({
        code: 'web-thin',
        severity: 'warn',
        figures: { webMm: web.webMm, leastMm: web.leastMm },
        where,
        source: 'web-least',
        ...fix
      })
    } else if (atClosure) {
      const [datumMm, farMm] = closureEnds(layout)
      const leastEndMm = (web.fromId === 'datum-end' ? datumMm : farMm) + web.leastMm + hole.diameterMm / 2
      found.push({
        code: 'hole-in-closure',
        severity: 'stop',
        figures: { overlapMm: -web.webMm, leastEndMm },
        where,
        source: 'web-least',
        ...fix
      })
    } else {
      found.push({ code: 'holes-overlap', severity: 'stop', figures: { overlapMm: -web.webMm }, where })
    }
  }
  return found
}

/** A hole can be moved away from a closure where it stays on the channel and its other web can spare as much. */
function givesWay(
  layout: LaidOut['layout'],
  web: LaidOut['layout']['webs'][number],
  holeId: string,
  toMm: number,
  shortMm: number
): boolean {
  if (toMm < 0 || toMm > layout.cutLengthMm) return false
  return layout.webs
    .filter((other) => other !== web && (other.fromId === holeId || other.toId === holeId))
    .every((other) => other.webMm - shortMm >= other.leastMm - SMALL_MM)
}

function sideFaces({ channel, layout }: LaidOut): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  const sides = layout.holes.filter((h) => h.face !== 'top')
  if (sides.length < 2) return found
  const openings = new Map(channel.openings.map((o) => [o.id, o]))
  sides.forEach((a, i) => {
    for (const b of sides.slice(i + 1)) {
      if (a.face !== b.face) continue
      const up = a.face === 'bottom' ? 0 : (openings.get(a.id)?.heightMm ?? 0) - (openings.get(b.id)?.heightMm ?? 0)
      const overlapMm = (a.diameterMm + b.diameterMm) / 2 - Math.hypot(a.atMm - b.atMm, up)
      if (overlapMm > 0)
        found.push({ code: 'holes-overlap', severity: 'stop', figures: { overlapMm }, where: placeOf(channel.id, b) })
    }
  })
  return found
}

function rimsMeet({ channel, fits }: LaidOut): readonly LayoutFinding[] {
  const order = channel.sites.map((site, i) => ({ site, fit: fits[i] })).sort((a, b) => a.site.atMm - b.site.atMm)
  for (let i = 0; i + 1 < order.length; i += 1) {
    const a = order[i]
    const b = order[i + 1]
    if (!a?.fit || !b?.fit) continue
    const pitchMm = b.site.atMm - a.site.atMm
    const rimMm = (a.fit.widestMm + b.fit.widestMm) / 2
    if (pitchMm < rimMm - SMALL_MM) {
      // Told once: sites at one pitch share the fault.
      return [
        {
          code: 'rims-overlap',
          severity: 'stop',
          figures: { pitchMm, rimMm },
          where: { channelId: channel.id, siteId: b.site.id, field: `channels.${channel.id}.sites.${b.site.id}.atMm` }
        }
      ]
    }
  }
  return []
}

function placeOf(channelId: string, hole: LaidOut['layout']['holes'][number]): LayoutFinding['where'] {
  return hole.kind === 'site'
    ? { channelId, siteId: hole.id, field: `channels.${channelId}.sites.${hole.id}.atMm` }
    : { channelId, openingId: hole.id, field: `channels.${channelId}.openings.${hole.id}.atMm` }
}
