import type { DrillRow } from '../bench'
import type { Drawing, Shape } from './drawing'
import { endViews } from './end-views'
import { faceStrip, marksAlongMm, type Reach, type Strip } from './face-strip'
import type { Built } from './named'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'
import { shifted } from './shifted'

const WIDTH_MM = 182
const LEFT_MM = 9
const RIGHT_MM = 25
/** A drawing with its heading stays on one page; faces that do not fit go on a drawing of their own. */
const HIGHEST_MM = 170
/** Words above a face and running dimensions below it. */
const AROUND_FACE_MM = 38

const FACES = ['top', 'front', 'back', 'bottom'] as const

/** A channel with more holes than their marks have room for is broken between two holes and drawn part below part. */
const partsAlong = (cutLengthMm: number, holes: readonly DrillRow[]): readonly Reach[] => {
  const top = holes.filter(({ face }) => face === 'top').sort((a, b) => a.atMm - b.atMm)
  const parts = Math.ceil(marksAlongMm(top) / (WIDTH_MM - LEFT_MM - RIGHT_MM))
  const each = Math.ceil(top.length / Math.max(1, parts))
  const breaks = top.flatMap((hole, index) => {
    const next = top[index + 1]
    return (index + 1) % each === 0 && next !== undefined ? [(hole.atMm + next.atMm) / 2] : []
  })
  const ends = [0, ...new Set(breaks.filter((atMm) => atMm > 0 && atMm < cutLengthMm)), cutLengthMm]
  return ends.slice(1).map((toMm, index) => ({ fromMm: ends[index] ?? 0, toMm }))
}

/**
 * A channel to scale, face by face where holes are, then the ends that are bored: datum end at the left, running
 * dimensions from it. Mostly one drawing.
 */
export const channelDrawings = (one: Built, holes: readonly DrillRow[], show: Printed): readonly Drawing[] => {
  const { section } = one.plan.layout
  const { cutLengthMm } = one
  const faces = FACES.filter((face) => face === 'top' || holes.some((hole) => hole.face === face))
  const parts = partsAlong(cutLengthMm, holes)
  const scale = scaleThatFits(
    Math.max(...parts.map(({ fromMm, toMm }) => toMm - fromMm)),
    Math.max(section.widthMm, section.heightMm),
    WIDTH_MM - LEFT_MM - RIGHT_MM,
    HIGHEST_MM - AROUND_FACE_MM
  )
  const strips: readonly Strip[] = [
    ...faces.flatMap((face) => {
      const stretches = parts.map((part) => ({
        part,
        // What lies off the channel stands at its end.
        on: holes.filter(
          (hole) =>
            hole.face === face &&
            (part.fromMm === 0 || hole.atMm >= part.fromMm) &&
            (part.toMm === cutLengthMm || hole.atMm < part.toMm)
        )
      }))
      return stretches
        .filter(({ on }) => face === 'top' || on.length > 0)
        .map(({ part, on }) => faceStrip(one, face, part, on, LEFT_MM, scale.factor, show))
    }),
    endViews(one, holes, LEFT_MM, scale.factor, show)
  ]
  return packed(strips).map(({ shapes, heightMm }, index) => ({
    widthMm: WIDTH_MM,
    heightMm,
    scale: scale.name,
    alt: `Channel ${one.plan.mark} with ${holes.length} holes${index === 0 ? '' : ', continued'}`,
    shapes
  }))
}

/** Strips one below the other, on as few drawings as their heights allow. */
const packed = (strips: readonly Strip[]): readonly Strip[] => {
  const drawings: { shapes: Shape[]; heightMm: number }[] = []
  for (const strip of strips) {
    if (strip.heightMm === 0) continue
    const last = drawings[drawings.length - 1]
    if (last === undefined || last.heightMm + strip.heightMm > HIGHEST_MM) {
      drawings.push({ shapes: [...strip.shapes], heightMm: strip.heightMm })
      continue
    }
    last.shapes.push(...strip.shapes.map((shape) => shifted(shape, 0, last.heightMm)))
    last.heightMm += strip.heightMm
  }
  return drawings
}
