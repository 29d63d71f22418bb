import { type LineShape, line, type PointMm, point, polygon, type Shape } from '../sheet'

/** What of a shape lies between two distances along x: lines cut, a circle that is cut becomes an open run of chords. */
export const clipAlong = (shape: Shape, fromMm: number, toMm: number): readonly Shape[] => {
  switch (shape.kind) {
    case 'line': {
      const cut = clipSegment(shape.fromMm, shape.toMm, fromMm, toMm)
      return cut === null ? [] : [{ ...shape, fromMm: cut[0], toMm: cut[1] }]
    }
    case 'circle': {
      const { xMm } = shape.centreMm
      if (xMm - shape.radiusMm >= fromMm && xMm + shape.radiusMm <= toMm) return [shape]
      if (xMm + shape.radiusMm <= fromMm || xMm - shape.radiusMm >= toMm) return []
      return clipRun(chords(shape.centreMm, shape.radiusMm), fromMm, toMm, shape.pen)
    }
    case 'polygon': {
      if (shape.pointsMm.every(({ xMm }) => xMm >= fromMm && xMm <= toMm)) return [shape]
      const [first] = shape.pointsMm
      const run = shape.closed && first !== undefined ? [...shape.pointsMm, first] : shape.pointsMm
      return clipRun(run, fromMm, toMm, shape.pen)
    }
    case 'text':
      return shape.atMm.xMm >= fromMm && shape.atMm.xMm <= toMm ? [shape] : []
    case 'rect':
      return [
        point(shape.xMm, shape.yMm),
        point(shape.xMm + shape.widthMm, shape.yMm),
        point(shape.xMm + shape.widthMm, shape.yMm + shape.heightMm),
        point(shape.xMm, shape.yMm + shape.heightMm)
      ].flatMap((corner, index, corners) => {
        const next = corners[(index + 1) % 4] ?? corner
        const cut = clipSegment(corner, next, fromMm, toMm)
        return cut === null ? [] : [line(cut[0].xMm, cut[0].yMm, cut[1].xMm, cut[1].yMm, shape.pen)]
      })
  }
}

/** The same down the page. */
export const clipDown = (shape: Shape, fromMm: number, toMm: number): readonly Shape[] =>
  clipAlong(crossed(shape), fromMm, toMm).map(crossed)

const swap = ({ xMm, yMm }: PointMm): PointMm => point(yMm, xMm)

/** x and y change places. */
const crossed = (shape: Shape): Shape => {
  switch (shape.kind) {
    case 'line':
      return { ...shape, fromMm: swap(shape.fromMm), toMm: swap(shape.toMm) }
    case 'circle':
      return { ...shape, centreMm: swap(shape.centreMm) }
    case 'polygon':
      return { ...shape, pointsMm: shape.pointsMm.map(swap) }
    case 'text':
      return { ...shape, atMm: swap(shape.atMm) }
    case 'rect':
      return { ...shape, xMm: shape.yMm, yMm: shape.xMm, widthMm: shape.heightMm, heightMm: shape.widthMm }
  }
}

/** 720 chords of a circle: at 100 mm across none is off by more than 0.0005 mm. */
const chords = (centre: PointMm, radiusMm: number): readonly PointMm[] =>
  Array.from({ length: 721 }, (_, index) => {
    const turn = (2 * Math.PI * index) / 720
    return point(centre.xMm + radiusMm * Math.cos(turn), centre.yMm + radiusMm * Math.sin(turn))
  })

const clipRun = (run: readonly PointMm[], fromMm: number, toMm: number, pen: LineShape['pen']): readonly Shape[] => {
  const pieces: PointMm[][] = []
  let piece: PointMm[] = []
  for (let index = 1; index < run.length; index += 1) {
    const start = run[index - 1]
    const end = run[index]
    const cut = start === undefined || end === undefined ? null : clipSegment(start, end, fromMm, toMm)
    if (cut === null) continue
    const last = piece[piece.length - 1]
    if (last === undefined || last.xMm !== cut[0].xMm || last.yMm !== cut[0].yMm) {
      piece = [cut[0]]
      pieces.push(piece)
    }
    piece.push(cut[1])
  }
  return pieces.map((points) => polygon(points, pen, 'none', false))
}

const clipSegment = (
  start: PointMm,
  end: PointMm,
  fromMm: number,
  toMm: number
): readonly [PointMm, PointMm] | null => {
  const run = end.xMm - start.xMm
  if (Math.min(start.xMm, end.xMm) > toMm || Math.max(start.xMm, end.xMm) < fromMm) return null
  if (run === 0) return [start, end]
  const at = (xMm: number): PointMm => point(xMm, start.yMm + ((xMm - start.xMm) / run) * (end.yMm - start.yMm))
  const inside = (p: PointMm): PointMm => (p.xMm < fromMm ? at(fromMm) : p.xMm > toMm ? at(toMm) : p)
  return [inside(start), inside(end)]
}
