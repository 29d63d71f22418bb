import type { ChannelLayout } from './channel-layout'

/** How far each closure keeps holes away from its cut end, from the webs worked out along the face. */
export function closureEnds(layout: ChannelLayout): readonly [datumMm: number, farMm: number] {
  const holes = new Map(layout.holes.map((h) => [h.id, h]))
  const first = layout.webs[0]
  const last = layout.webs.at(-1)
  const firstHole = first && holes.get(first.toId)
  const lastHole = last && holes.get(last.fromId)
  return [
    first && firstHole ? firstHole.atMm - firstHole.diameterMm / 2 - first.webMm : 0,
    last && lastHole ? layout.cutLengthMm - lastHole.atMm - lastHole.diameterMm / 2 - last.webMm : 0
  ]
}
