import type { PointMm, Shape } from './drawing'

/** A shape moved on paper. */
export const shifted = (shape: Shape, dxMm: number, dyMm: number): Shape => {
  const to = ({ xMm, yMm }: PointMm): PointMm => ({ xMm: xMm + dxMm, yMm: yMm + dyMm })
  switch (shape.kind) {
    case 'line':
      return { ...shape, fromMm: to(shape.fromMm), toMm: to(shape.toMm) }
    case 'rect':
      return { ...shape, xMm: shape.xMm + dxMm, yMm: shape.yMm + dyMm }
    case 'circle':
      return { ...shape, centreMm: to(shape.centreMm) }
    case 'polygon':
      return { ...shape, pointsMm: shape.pointsMm.map(to) }
    case 'text':
      return { ...shape, atMm: to(shape.atMm) }
  }
}
