export interface DimensionProps {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly text: string
  /** To which side of the line the figure stands, for an upright one: right (1) or left (-1). */
  readonly side?: 1 | -1
}

/** A thin dimension line with oblique end marks and its figure. */
export function Dimension({ x1, y1, x2, y2, text, side = 1 }: DimensionProps) {
  const upright = Math.abs(x2 - x1) < Math.abs(y2 - y1)
  const middle = { x: (x1 + x2) / 2, y: (y1 + y2) / 2 }
  return (
    <g>
      <line className="pen-thin" x1={x1} y1={y1} x2={x2} y2={y2} />
      <EndMark x={x1} y={y1} />
      <EndMark x={x2} y={y2} />
      <text
        className="soft"
        x={upright ? middle.x + 6 * side : middle.x}
        y={upright ? middle.y + 4 : middle.y - 5}
        textAnchor={upright ? (side === 1 ? 'start' : 'end') : 'middle'}
      >
        {text}
      </text>
    </g>
  )
}

function EndMark({ x, y }: { readonly x: number; readonly y: number }) {
  return <line className="pen-thin" x1={x - 3} y1={y + 3} x2={x + 3} y2={y - 3} />
}
