import type { RingPlan, SheetSetup } from '../../shared-model/rings'

interface Sheet {
  readonly widthMm: number
  readonly heightMm: number
  readonly cutDiameterMm: number
  readonly webMm: number
  readonly edgeMm: number
}

/** By how much the worst edge or web is too small, in mm; 0 when all are kept. */
export const worstOverlap = (sheet: Sheet, centres: readonly (readonly [number, number])[]): number => {
  const margin = sheet.edgeMm + sheet.cutDiameterMm / 2
  let worst = 0
  for (const [i, [x, y]] of centres.entries()) {
    worst = Math.max(worst, margin - x, margin - y, x + margin - sheet.widthMm, y + margin - sheet.heightMm)
    for (const [u, v] of centres.slice(0, i)) {
      worst = Math.max(worst, sheet.cutDiameterMm + sheet.webMm - Math.hypot(x - u, y - v))
    }
  }
  return worst
}

/** The same for a plan of circles of many sizes, plates and kept offcuts. */
export const worstOfPlan = (plan: RingPlan, { webMm, edgeMm }: SheetSetup): number => {
  let worst = 0
  for (const sheet of plan.sheets) {
    const boxes = sheet.plates.map((plate) => ({ ...plate, gap: webMm }))
    for (const plate of sheet.plates) {
      worst = Math.max(worst, edgeMm - plate.xMm, edgeMm - plate.yMm)
      worst = Math.max(worst, plate.xMm + plate.widthMm + edgeMm - sheet.widthMm)
      worst = Math.max(worst, plate.yMm + plate.heightMm + edgeMm - sheet.heightMm)
    }
    const solid = [...boxes, ...sheet.offcuts.map((offcut) => ({ ...offcut, gap: 0 }))]
    for (const [i, a] of solid.entries()) {
      for (const b of solid.slice(0, i)) {
        const gap = a.gap === 0 || b.gap === 0 ? 0 : webMm
        const apartX = Math.max(a.xMm - b.xMm - b.widthMm, b.xMm - a.xMm - a.widthMm)
        const apartY = Math.max(a.yMm - b.yMm - b.heightMm, b.yMm - a.yMm - a.heightMm)
        worst = Math.max(worst, gap - Math.max(apartX, apartY))
      }
    }
    for (const [i, circle] of sheet.circles.entries()) {
      const margin = edgeMm + circle.diameterMm / 2
      worst = Math.max(worst, margin - circle.xMm, margin - circle.yMm)
      worst = Math.max(worst, circle.xMm + margin - sheet.widthMm, circle.yMm + margin - sheet.heightMm)
      for (const other of sheet.circles.slice(0, i)) {
        const apart = (circle.diameterMm + other.diameterMm) / 2 + webMm
        worst = Math.max(worst, apart - Math.hypot(circle.xMm - other.xMm, circle.yMm - other.yMm))
      }
      for (const box of solid) {
        const dx = Math.max(box.xMm - circle.xMm, circle.xMm - box.xMm - box.widthMm, 0)
        const dy = Math.max(box.yMm - circle.yMm, circle.yMm - box.yMm - box.heightMm, 0)
        worst = Math.max(worst, circle.diameterMm / 2 + box.gap - Math.hypot(dx, dy))
      }
    }
  }
  return worst
}
