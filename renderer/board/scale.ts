/**
 * The one place where millimetres become pixels and back. x runs along the sill to the right; y on the sill runs from
 * the room towards the glass, and the window is at the top of the picture, so y turns over on the way.
 */
export interface Scale {
  readonly pxPerMm: number
  /** Where the sill's left front corner lies in the picture. */
  readonly originX: number
  readonly originY: number
}

export interface Point {
  readonly x: number
  readonly y: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

/** A CSS pixel is 1/96 in, so true size is this many pixels to the millimetre. */
export const TRUE_SIZE = 96 / 25.4
/** From 1:20 to 4:1. */
export const LEAST_SCALE = TRUE_SIZE / 20
export const MOST_SCALE = TRUE_SIZE * 4

export const xPx = (scale: Scale, xMm: number): number => scale.originX + xMm * scale.pxPerMm
export const yPx = (scale: Scale, yMm: number): number => scale.originY - yMm * scale.pxPerMm
export const toPx = (scale: Scale, xMm: number, yMm: number): Point => ({ x: xPx(scale, xMm), y: yPx(scale, yMm) })
export const toMm = (scale: Scale, at: Point): Point => ({
  x: (at.x - scale.originX) / scale.pxPerMm,
  y: (scale.originY - at.y) / scale.pxPerMm
})

export const sameScale = (a: Scale, b: Scale): boolean =>
  a.pxPerMm === b.pxPerMm && a.originX === b.originX && a.originY === b.originY

const held = (pxPerMm: number): number => Math.min(MOST_SCALE, Math.max(LEAST_SCALE, pxPerMm))

/** Zooms by a factor and keeps the millimetre under the pointer where it is. */
export function zoomedAt(scale: Scale, at: Point, factor: number): Scale {
  const pxPerMm = held(scale.pxPerMm * factor)
  const under = toMm(scale, at)
  return { pxPerMm, originX: at.x - under.x * pxPerMm, originY: at.y + under.y * pxPerMm }
}

export const panned = (scale: Scale, dx: number, dy: number): Scale => ({
  ...scale,
  originX: scale.originX + dx,
  originY: scale.originY + dy
})

export interface Extent {
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly depthMm: number
}

/** The scale at which an extent fills the picture inside a margin, in its middle. */
export function fitted(extent: Extent, picture: Size, marginPx: number): Scale {
  const room = (side: number): number => Math.max(40, side - 2 * marginPx)
  const pxPerMm = held(
    Math.min(room(picture.width) / Math.max(1, extent.lengthMm), room(picture.height) / Math.max(1, extent.depthMm))
  )
  return {
    pxPerMm,
    originX: picture.width / 2 - (extent.xMm + extent.lengthMm / 2) * pxPerMm,
    originY: picture.height / 2 + (extent.yMm + extent.depthMm / 2) * pxPerMm
  }
}

/** The extent that holds all of these. */
export function joined(extents: readonly Extent[]): Extent | null {
  if (extents.length === 0) return null
  const left = Math.min(...extents.map((each) => each.xMm))
  const front = Math.min(...extents.map((each) => each.yMm))
  return {
    xMm: left,
    yMm: front,
    lengthMm: Math.max(...extents.map((each) => each.xMm + each.lengthMm)) - left,
    depthMm: Math.max(...extents.map((each) => each.yMm + each.depthMm)) - front
  }
}

/** The scale as a drawing names it: `1:5`, `2:1`. */
export function scaleName(scale: Scale): string {
  const share = scale.pxPerMm / TRUE_SIZE
  const figure = (value: number): string => (value < 10 ? value.toFixed(1).replace(/\.0$/, '') : value.toFixed(0))
  return share >= 1 ? `${figure(share)}:1` : `1:${figure(1 / share)}`
}

/** Room around a fitted drawing for rulers and dimensions. */
export const MARGIN_PX = 68
