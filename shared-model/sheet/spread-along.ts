interface Wanted {
  readonly atMm: number
  /** Half of the room it takes along the line. */
  readonly halfMm: number
}

/**
 * Places along a line for labels that would run into each other: each as near to where it is wanted as its neighbours
 * allow, in their order, pushed on to the right and, at the end of the room, back to the left.
 */
export const spreadAlong = (wanted: readonly Wanted[], gapMm: number, mostMm: number): readonly number[] => {
  const placed: number[] = []
  for (const [index, { atMm, halfMm }] of wanted.entries()) {
    const before = placed[index - 1]
    const past = before === undefined ? atMm : before + (wanted[index - 1]?.halfMm ?? 0) + gapMm + halfMm
    placed.push(Math.max(atMm, past))
  }
  let roomMm = mostMm
  for (let index = wanted.length - 1; index >= 0; index -= 1) {
    const halfMm = wanted[index]?.halfMm ?? 0
    const atMm = placed[index] ?? 0
    if (atMm + halfMm <= roomMm) break
    placed[index] = roomMm - halfMm
    roomMm -= 2 * halfMm + gapMm
  }
  return placed
}
