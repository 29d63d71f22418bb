import type { Drawing, PointMm, Shape } from '../../shared-model/sheet'

/** A point of lettering in millimetres. */
const MM_PER_PT = 25.4 / 72

/** A drawing of the build sheet on screen: the same lines and letters, in the screen's own ink. */
export function DrawingView({ drawing }: { readonly drawing: Drawing }) {
  return (
    <svg
      className="paper-drawing"
      viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`}
      role="img"
      aria-label={drawing.alt === '' ? `Drawing, ${drawing.scale}` : drawing.alt}
    >
      {drawing.shapes.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of a drawing have no name but their place
        <ShapeView key={index} shape={shape} />
      ))}
    </svg>
  )
}

function ShapeView({ shape }: { readonly shape: Shape }) {
  switch (shape.kind) {
    case 'line':
      return (
        <line
          className={`paper-${shape.pen}`}
          x1={shape.fromMm.xMm}
          y1={shape.fromMm.yMm}
          x2={shape.toMm.xMm}
          y2={shape.toMm.yMm}
        />
      )
    case 'rect':
      return (
        <rect
          className={`paper-${shape.pen} fill-${shape.fill}`}
          x={shape.xMm}
          y={shape.yMm}
          width={Math.max(0, shape.widthMm)}
          height={Math.max(0, shape.heightMm)}
          rx={shape.cornerMm}
        />
      )
    case 'circle':
      return (
        <circle
          className={`paper-${shape.pen} fill-${shape.fill}`}
          cx={shape.centreMm.xMm}
          cy={shape.centreMm.yMm}
          r={Math.max(0, shape.radiusMm)}
        />
      )
    case 'polygon':
      return shape.closed ? (
        <polygon className={`paper-${shape.pen} fill-${shape.fill}`} points={pointsOf(shape.pointsMm)} />
      ) : (
        <polyline className={`paper-${shape.pen} fill-none`} points={pointsOf(shape.pointsMm)} />
      )
    case 'text':
      return (
        <text
          className={shape.white ? 'paper-text white' : 'paper-text'}
          x={shape.atMm.xMm}
          y={shape.atMm.yMm}
          fontSize={shape.sizePt * MM_PER_PT}
          fontWeight={shape.bold ? 650 : 400}
          textAnchor={shape.anchor}
          transform={shape.turned ? `rotate(-90 ${shape.atMm.xMm} ${shape.atMm.yMm})` : undefined}
        >
          {shape.text}
        </text>
      )
  }
}

const pointsOf = (points: readonly PointMm[]): string => points.map(({ xMm, yMm }) => `${xMm},${yMm}`).join(' ')
