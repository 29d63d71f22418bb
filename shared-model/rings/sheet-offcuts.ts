import type { Area } from './round-stock'

/** More obstacles than this and only the strips along the sides are looked at. */
const MOST_OBSTACLES = 90
const MOST_OFFCUTS = 3

/**
 * Whole rectangles that stay free of the given boxes, the largest first, none overlapping, each at least `keepFromMm`
 * on its shorter side: what goes back on the rack.
 */
export const sheetOffcuts = (sheet: Area, boxes: readonly Area[], keepFromMm: number): readonly Area[] => {
  const kept: Area[] = []
  const taken = boxes.length > MOST_OBSTACLES ? [hullOf(boxes)] : [...boxes]
  while (kept.length < MOST_OFFCUTS) {
    const largest = largestFree(sheet, taken, keepFromMm)
    if (!largest) break
    kept.push(largest)
    taken.push(largest)
  }
  return kept
}

const right = (box: Area): number => box.xMm + box.widthMm
const top = (box: Area): number => box.yMm + box.heightMm

const hullOf = (boxes: readonly Area[]): Area => {
  const xMm = Math.min(...boxes.map((box) => box.xMm))
  const yMm = Math.min(...boxes.map((box) => box.yMm))
  return {
    xMm,
    yMm,
    widthMm: Math.max(...boxes.map(right)) - xMm,
    heightMm: Math.max(...boxes.map(top)) - yMm
  }
}

/** Tries every pair of left and right edge and the tallest gap between the boxes that reach in between them. */
const largestFree = (sheet: Area, boxes: readonly Area[], keepFromMm: number): Area | null => {
  const lefts = edges([sheet.xMm, ...boxes.map(right)], sheet)
  const rights = edges([right(sheet), ...boxes.map((box) => box.xMm)], sheet)
  const byHeight = [...boxes].sort((a, b) => a.yMm - b.yMm)
  let best: Area | null = null
  let most = 0
  for (const from of lefts) {
    for (const to of rights) {
      const widthMm = to - from
      if (widthMm < keepFromMm || widthMm * sheet.heightMm <= most) continue
      let low = sheet.yMm
      for (let i = 0; i <= byHeight.length; i++) {
        const box = byHeight[i]
        if (box && (right(box) <= from || box.xMm >= to)) continue
        const heightMm = (box ? Math.min(box.yMm, top(sheet)) : top(sheet)) - low
        if (heightMm >= keepFromMm && widthMm * heightMm > most) {
          most = widthMm * heightMm
          best = { xMm: from, yMm: low, widthMm, heightMm }
        }
        if (box) low = Math.max(low, top(box))
      }
    }
  }
  return best
}

const edges = (all: readonly number[], sheet: Area): number[] =>
  [...new Set(all)].filter((x) => x >= sheet.xMm && x <= right(sheet)).sort((a, b) => a - b)
