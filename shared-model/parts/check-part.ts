import type { PartsProblem } from './codes'
import type { Collar, Cup, EndClosure, HoleSaw, PlantCollar, Riser } from './part'

/** Everything about a part that cannot be, each with its field and both bounds; empty where it can be worked with. */
export function checkCup(cup: Cup): readonly PartsProblem[] {
  const sizes = [
    size(cup.id, 'rimOutsideMm', cup.rimOutsideMm, 5, 500),
    size(cup.id, 'heightMm', cup.heightMm, 5, 500),
    size(cup.id, 'bodyUnderRimMm', cup.bodyUnderRimMm, 5, 500),
    size(cup.id, 'bottomMm', cup.bottomMm, 0, 500),
    share(cup.id, 'floodedShare', cup.floodedShare, 0, 1),
    mass(cup.id, cup.massG)
  ].filter((problem) => problem !== null)
  if (sizes.length > 0) return sizes
  return [
    within(cup.id, 'cup-bottom-wider-than-body', 'bottomMm', cup.bottomMm, 0, cup.bodyUnderRimMm),
    within(cup.id, 'cup-body-wider-than-rim', 'bodyUnderRimMm', cup.bodyUnderRimMm, 5, cup.rimOutsideMm),
    within(cup.id, 'cup-wall-too-thick', 'wallMm', cup.wallMm, 0.05, Math.max(cup.bottomMm, 1) / 2),
    within(cup.id, 'cup-rim-higher-than-cup', 'rimThicknessMm', cup.rimThicknessMm, 0, cup.heightMm - 1)
  ].filter((problem) => problem !== null)
}

export function checkRiser(riser: Riser): readonly PartsProblem[] {
  const { cup, opened } = riser
  const opening =
    opened.by === 'cut'
      ? within(
          riser.id,
          'riser-opened-outside-cup',
          'opened.belowRimMm',
          opened.belowRimMm,
          cup.rimThicknessMm,
          cup.heightMm
        )
      : within(riser.id, 'riser-opened-outside-cup', 'opened.sawDiameterMm', opened.sawDiameterMm, 5, cup.bottomMm)
  return opening === null ? checkCup(cup) : [...checkCup(cup), opening]
}

export const checkCollar = (collar: Collar): readonly PartsProblem[] =>
  [
    size(collar.id, 'thicknessMm', collar.thicknessMm, 0.5, 100),
    share(collar.id, 'squeezeShare', collar.squeezeShare, 0, 0.5)
  ].filter((problem) => problem !== null)

export const checkPlantCollar = (collar: PlantCollar): readonly PartsProblem[] =>
  [
    size(collar.id, 'outsideMm', collar.outsideMm, 5, 500),
    size(collar.id, 'thicknessMm', collar.thicknessMm, 0.5, 100)
  ].filter((problem) => problem !== null)

export function checkSaw(saw: HoleSaw): readonly PartsProblem[] {
  return [
    size(saw.id, 'diameterMm', saw.diameterMm, 5, 300),
    size(saw.id, 'kerfMm', saw.kerfMm, 0, Math.max(0, saw.diameterMm / 2) || 0),
    size(saw.id, 'depthMm', saw.depthMm, 1, 300),
    size(saw.id, 'oversizeMm', saw.oversizeMm, 0, 5)
  ].filter((problem) => problem !== null)
}

export function checkClosure(closure: EndClosure): readonly PartsProblem[] {
  const { widthMm, heightMm, toleranceMm } = closure.holdsOn
  return [
    widthMm === null ? null : size(closure.id, 'holdsOn.widthMm', widthMm, 10, 1000),
    heightMm === null ? null : size(closure.id, 'holdsOn.heightMm', heightMm, 10, 1000),
    size(closure.id, 'holdsOn.toleranceMm', toleranceMm, 0, 20),
    size(closure.id, 'addsLengthMm', closure.addsLengthMm, 0, 200),
    size(closure.id, 'insideDepthMm', closure.insideDepthMm, 0, 300),
    size(closure.id, 'outsideDepthMm', closure.outsideDepthMm, 0, 300),
    size(closure.id, 'proudMm', closure.proudMm, 0, 50),
    mass(closure.id, closure.massG)
  ].filter((problem) => problem !== null)
}

type BoundedCode =
  | 'cup-bottom-wider-than-body'
  | 'cup-body-wider-than-rim'
  | 'cup-wall-too-thick'
  | 'cup-rim-higher-than-cup'
  | 'riser-opened-outside-cup'

const outside = (value: number, least: number, most: number): boolean => !(value >= least && value <= most)
const finite = (value: number): number => (Number.isFinite(value) ? value : -1)

function within(
  partId: string,
  code: BoundedCode,
  field: string,
  value: number,
  leastMm: number,
  mostMm: number
): PartsProblem | null {
  if (!outside(value, leastMm, mostMm)) return null
  return { code, figures: { valueMm: finite(value), leastMm, mostMm }, where: { partId, field } }
}

function size(partId: string, field: string, value: number, leastMm: number, mostMm: number): PartsProblem | null {
  if (!outside(value, leastMm, mostMm)) return null
  const figures = { size: field, valueMm: finite(value), leastMm, mostMm }
  return { code: 'part-size-outside', figures, where: { partId, field } }
}

function share(partId: string, field: string, value: number, least: number, most: number): PartsProblem | null {
  if (!outside(value, least, most)) return null
  const figures = { share: field, value: finite(value), least, most }
  return { code: 'part-share-outside', figures, where: { partId, field } }
}

function mass(partId: string, value: number): PartsProblem | null {
  if (!outside(value, 0, 20_000)) return null
  return {
    code: 'part-mass-outside',
    figures: { valueG: finite(value), leastG: 0, mostG: 20_000 },
    where: { partId, field: 'massG' }
  }
}
