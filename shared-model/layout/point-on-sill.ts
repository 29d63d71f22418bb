import type { Outline } from './channel-layout'
import type { Channel, Heading } from './layout'

type Placed = Pick<Channel, 'xMm' | 'yMm' | 'heading'>

/** Which way a channel runs, and the way across it, as steps of 0 and ±1 along x and y. */
export function direction(heading: Heading): { readonly dx: number; readonly dy: number } {
  switch (heading) {
    case 0:
      return { dx: 1, dy: 0 }
    case 90:
      return { dx: 0, dy: 1 }
    case 180:
      return { dx: -1, dy: 0 }
    case 270:
      return { dx: 0, dy: -1 }
  }
}

/** A point `alongMm` from the datum end and `acrossMm` to the left of the way it runs, on the sill. */
export function pointOnSill(
  channel: Placed,
  alongMm: number,
  acrossMm = 0
): { readonly xMm: number; readonly yMm: number } {
  const { dx, dy } = direction(channel.heading)
  return { xMm: channel.xMm + dx * alongMm - dy * acrossMm, yMm: channel.yMm + dy * alongMm + dx * acrossMm }
}

/** The rectangle on the sill between two distances along a channel, `widthMm` wide about its centre line. */
export function stripOnSill(channel: Placed, fromMm: number, toMm: number, widthMm: number): Outline {
  const a = pointOnSill(channel, fromMm, widthMm / 2)
  const b = pointOnSill(channel, toMm, -widthMm / 2)
  return {
    xMm: Math.min(a.xMm, b.xMm),
    yMm: Math.min(a.yMm, b.yMm),
    lengthMm: Math.abs(a.xMm - b.xMm),
    depthMm: Math.abs(a.yMm - b.yMm)
  }
}
