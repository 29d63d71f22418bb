import { material } from '../materials'
import type { Body } from './body'
import type { PartIndex } from './part-index'

/**
 * Mass of one part of a stack, g: a cup as weighed; a riser the share of its cup's wall (and bored bottom) that is kept; a collar its ring of
 * sheet by the material's density; a bought or cut plant collar as a disc of soft foam.
 * @source seat-geometry
 */
export function partMassG(body: Body, index: PartIndex): number {
  switch (body.kind) {
    case 'cup':
      return index.cups.get(body.partId)?.massG ?? 0
    case 'riser': {
      const cup = index.risers.get(body.partId)?.cup
      if (!cup) return 0
      const whole = wallArea(cup.bodyUnderRimMm, cup.bottomMm, cup.heightMm) + (Math.PI / 4) * cup.bottomMm ** 2
      const kept = wallArea(body.underRimMm, body.lowerMm, body.heightMm) + flangeArea(body)
      return whole > 0 ? cup.massG * Math.min(1, kept / whole) : 0
    }
    case 'collar': {
      const collar = index.collars.get(body.partId)
      return collar ? (ringVolume(body) * material(collar.material).densityGPerCm3) / 1000 : 0
    }
    case 'plant-collar':
      return (ringVolume(body) * material('eva-foam').densityGPerCm3) / 1000
  }
}

const wallArea = (upperMm: number, lowerMm: number, heightMm: number): number =>
  (Math.PI / 2) * (upperMm + lowerMm) * heightMm

/** Bottom that a bored riser keeps round its hole. */
const flangeArea = ({ lowerMm, flangeHoleMm }: Body): number =>
  flangeHoleMm === null ? 0 : (Math.PI / 4) * Math.max(0, lowerMm ** 2 - flangeHoleMm ** 2)

const ringVolume = (body: Body): number =>
  (Math.PI / 4) * (body.rimMm ** 2 - Math.min(body.opening.mouthMm, body.rimMm) ** 2) * body.heightMm
