import type { ChannelPlan } from '../../shared-model/plan'

/** From millimetres along the channel and above the inside floor to the picture. */
export interface SectionScale {
  readonly pxPerMm: number
  readonly x: (alongMm: number) => number
  readonly y: (heightMm: number) => number
  readonly height: number
}

/** Room for lettering around the drawing. */
const SIDE_PX = 108
const HEAD_PX = 10
const FOOT_PX = 26

/** How far a stack stands above the inside floor, and the face over it. */
export function topOf(part: ChannelPlan): number {
  const inside = part.water.insideHeightMm + part.layout.section.leastWallMm
  return Math.max(inside, ...part.seats.map((seat) => seat.topMm)) + 6
}

/** The whole channel across the width, both ways to the same scale, unless it would be higher than the room there is. */
export function alongScale(part: ChannelPlan, widthPx: number, mostHeightPx: number, letters: number): SectionScale {
  const { cutLengthMm, overallLengthMm, section } = part.layout
  const topMm = topOf(part)
  const lowMm = section.averageWallMm + part.layout.standsMm
  const room = Math.max(80, widthPx - 2 * SIDE_PX * letters)
  const foot = FOOT_PX * letters
  const pxPerMm = Math.min(room / overallLengthMm, (mostHeightPx - HEAD_PX - foot) / (topMm + lowMm))
  const left = (widthPx - cutLengthMm * pxPerMm) / 2
  return {
    pxPerMm,
    x: (alongMm) => left + alongMm * pxPerMm,
    y: (heightMm) => HEAD_PX + (topMm - heightMm) * pxPerMm,
    height: HEAD_PX + foot + (topMm + lowMm) * pxPerMm
  }
}
