import type { Extent } from './scale'

/** A line that a moved thing is drawn to, and what it is: said on the board as a dimension while dragging. */
export interface SnapLine {
  readonly axis: 'x' | 'y'
  readonly atMm: number
  readonly what: 'edge' | 'centre' | 'channel' | 'clearance'
}

/** How one axis was drawn: by how much the thing moved for it, and to what. */
export interface Snapped {
  readonly shiftMm: number
  readonly line: SnapLine | null
}

const feelers = (startMm: number, sizeMm: number): readonly number[] => [
  startMm,
  startMm + sizeMm / 2,
  startMm + sizeMm
]

/**
 * Draws one axis of a moved extent to the nearest line within reach (its near edge, centre or far edge); with none in
 * reach, its near edge to the graduation.
 */
export function snapAxis(
  axis: 'x' | 'y',
  startMm: number,
  sizeMm: number,
  lines: readonly SnapLine[],
  reachMm: number,
  graduationMm: number
): Snapped {
  let best: Snapped | null = null
  feelers(startMm, sizeMm).forEach((feeler, which) => {
    for (const line of lines) {
      if (line.axis !== axis || (line.what === 'centre') !== (which === 1)) continue
      const shiftMm = line.atMm - feeler
      if (Math.abs(shiftMm) <= reachMm && (best === null || Math.abs(shiftMm) < Math.abs(best.shiftMm))) {
        best = { shiftMm, line }
      }
    }
  })
  return best ?? { shiftMm: onGraduation(startMm, graduationMm) - startMm, line: null }
}

/** The nearest graduation. */
export const onGraduation = (valueMm: number, graduationMm: number): number =>
  Math.round(valueMm / graduationMm) * graduationMm

/** Edges, fit clearances and centre lines of the sill. */
export function sillLines(lengthMm: number, depthMm: number, clearanceMm: number): readonly SnapLine[] {
  const axis = (name: 'x' | 'y', size: number): readonly SnapLine[] => [
    { axis: name, atMm: 0, what: 'edge' },
    { axis: name, atMm: size, what: 'edge' },
    { axis: name, atMm: clearanceMm, what: 'clearance' },
    { axis: name, atMm: size - clearanceMm, what: 'clearance' },
    { axis: name, atMm: size / 2, what: 'centre' }
  ]
  return [...axis('x', lengthMm), ...axis('y', depthMm)]
}

/** Edges and centre lines of the channels that stay where they are. */
export const channelLines = (outlines: readonly Extent[]): readonly SnapLine[] =>
  outlines.flatMap(({ xMm, yMm, lengthMm, depthMm }): readonly SnapLine[] => [
    { axis: 'x', atMm: xMm, what: 'channel' },
    { axis: 'x', atMm: xMm + lengthMm, what: 'channel' },
    { axis: 'x', atMm: xMm + lengthMm / 2, what: 'centre' },
    { axis: 'y', atMm: yMm, what: 'channel' },
    { axis: 'y', atMm: yMm + depthMm, what: 'channel' },
    { axis: 'y', atMm: yMm + depthMm / 2, what: 'centre' }
  ])
