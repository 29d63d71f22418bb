import { checkFrustum, frustumVolume } from '../../../shared-model/parts'
import {
  averageBore,
  boreArea,
  boreFromWall,
  checkLevel,
  checkSection,
  grossStrength,
  insideHeight,
  levelFromArea,
  massPerMetre,
  netStrength,
  pipeStrip,
  roundSection,
  type Section,
  saddleGap,
  sawDepthOnPipe,
  wetArea
} from '../../../shared-model/profile'
import {
  GRAMS_PER_POUND,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM3_PER_LITRE,
  mm,
  mm2,
  mmFromInches,
  usGallonsFromLitres
} from '../../../shared-model/units'
import { type Answer, answer, number, type Work } from './answer'
import type { Fields } from './check'

/** Bores, levels, strength and weight of profiles; cups as frusta. */
export const SECTION_QUANTITIES: Readonly<Record<string, Work>> = {
  'pipe-average-bore': (inputs) => {
    const outside = mmFromInches(number(inputs, 'outsideIn'))
    const wall = mmFromInches(number(inputs, 'minWallIn'))
    return answer(averageBore(outside, wall, number(inputs, 'wallFactor', 1.03)), (bore) => ({
      boreIn: bore / MM_PER_INCH,
      boreAreaFt2: boreArea(roundSection(outside, bore)) / MM_PER_FOOT ** 2
    }))
  },
  'pipe-bore': (inputs) =>
    answer(boreFromWall(mmFromInches(number(inputs, 'outsideIn')), mmFromInches(number(inputs, 'wallIn'))), (bore) => ({
      boreIn: bore / MM_PER_INCH
    })),
  'round-bore-capacity': (inputs) => {
    return withSection(roundBore(number(inputs, 'boreIn') * MM_PER_INCH), (bore) => {
      const litresPerFt = (boreArea(bore) * MM_PER_FOOT) / MM3_PER_LITRE
      return { usGallonsPerFt: usGallonsFromLitres(litresPerFt), litresPerFt }
    })
  },
  'partly-filled-round': (inputs) => {
    const bore = roundBore(100)
    const area = wetAt(bore, number(inputs, 'depthRatio') * 100)
    if (typeof area !== 'number') return area
    return { areaOverDiameterSquared: area / 100 ** 2, areaOverFullArea: area / boreArea(bore) }
  },
  'partly-filled-round-area': (inputs) => {
    return withSection(roundBore(number(inputs, 'diameterMm')), (bore) => {
      const area = wetAt(bore, number(inputs, 'depthMm'))
      return typeof area === 'number' ? { areaMm2: area } : area
    })
  },
  'partly-filled-round-by-radius': (inputs) => {
    const area = wetAt(roundBore(200), number(inputs, 'depthOverRadius') * 100)
    return typeof area === 'number' ? { areaOverRadiusSquared: area / 100 ** 2 } : area
  },
  'partly-filled-round-depth': (inputs) =>
    withSection(roundBore(number(inputs, 'diameterMm')), (bore) =>
      answer(levelFromArea(bore, mm2(number(inputs, 'areaMm2'))), (depthMm) => ({ depthMm }))
    ),
  'cup-volume': (inputs) => {
    const [top, bottom] = [mm(number(inputs, 'topRadiusMm')), mm(number(inputs, 'bottomRadiusMm'))]
    const height = mm(number(inputs, 'heightMm'))
    const wrong = checkFrustum(top, bottom, height)
    return wrong ? { problem: wrong.code } : { volumeMm3: frustumVolume(top, bottom, height) }
  },
  'round-tube-section': (inputs) => {
    const section = roundSection(mmFromInches(number(inputs, 'outsideIn')), mmFromInches(number(inputs, 'boreIn')))
    return withSection(section, (sound) => inInches(grossStrength(sound)))
  },
  'rectangular-tube-section': (inputs) =>
    withSection(tube(inputs), (section) => {
      const upright = grossStrength(section)
      const flat = grossStrength({ ...section, widthMm: section.heightMm, heightMm: section.widthMm })
      return {
        areaIn2: upright.areaMm2 / MM_PER_INCH ** 2,
        secondMomentUprightIn4: upright.secondMomentMm4 / MM_PER_INCH ** 4,
        secondMomentFlatIn4: flat.secondMomentMm4 / MM_PER_INCH ** 4,
        sectionModulusUprightIn3: upright.sectionModulusMm3 / MM_PER_INCH ** 3,
        sectionModulusFlatIn3: flat.sectionModulusMm3 / MM_PER_INCH ** 3
      }
    }),
  'net-section': (inputs) =>
    withSection(tube(inputs), (section) =>
      answer(netStrength(section, mmFromInches(number(inputs, 'holeIn'))), inInches)
    ),
  'rectangular-bore-area': (inputs) =>
    withSection(tube(inputs), (section) => ({ areaIn2: boreArea(section) / MM_PER_INCH ** 2 })),
  'tube-weight': (inputs) => {
    const section = roundSection(mmFromInches(number(inputs, 'outsideIn')), mmFromInches(number(inputs, 'boreIn')))
    return withSection(section, (sound) => {
      const gramsPerMetre = massPerMetre(sound, number(inputs, 'densityGPerCm3'))
      return { lbPerFt: (gramsPerMetre * (MM_PER_FOOT / 1000)) / GRAMS_PER_POUND, kgPerM: gramsPerMetre / 1000 }
    })
  },
  saddle: (inputs) => {
    const radius = mm(number(inputs, 'outsideRadiusMm'))
    const hole = mm(number(inputs, 'holeMm'))
    return answer(saddleGap(radius, hole), (gapMm) =>
      answer(sawDepthOnPipe(radius, mm(number(inputs, 'wallMm')), hole), (sawDepthMm) => ({
        gapMm,
        sawDepthMm,
        stripMm: pipeStrip(radius, hole)
      }))
    )
  }
}

/** The answer from a section that can be, else the code of what is wrong with it. */
function withSection(section: Section, work: (section: Section) => Answer): Answer {
  const wrong = checkSection(section)
  return wrong ? { problem: wrong.code } : work(section)
}

const inInches = ({ areaMm2, secondMomentMm4, sectionModulusMm3 }: ReturnType<typeof grossStrength>): Answer => ({
  areaIn2: areaMm2 / MM_PER_INCH ** 2,
  secondMomentIn4: secondMomentMm4 / MM_PER_INCH ** 4,
  sectionModulusIn3: sectionModulusMm3 / MM_PER_INCH ** 3
})

/** A round bore without a wall. */
const roundBore = (diameterMm: number): Section => roundSection(mm(diameterMm), mm(diameterMm))

function wetAt(section: Section, level: number): number | Answer {
  const problem = checkLevel(section, mm(level))
  // A level that a conversion leaves a last bit above the bore stands at its top.
  const top = insideHeight(section)
  if (problem !== null && Math.abs(level - top) > 1e-9) return { problem: problem.code }
  return wetArea(section, mm(level))
}

const tube = (inputs: Fields): Section => ({
  shape: 'rectangle',
  widthMm: number(inputs, 'widthIn') * MM_PER_INCH,
  heightMm: number(inputs, 'heightIn') * MM_PER_INCH,
  averageWallMm: number(inputs, 'wallIn', 0) * MM_PER_INCH,
  leastWallMm: number(inputs, 'wallIn', 0) * MM_PER_INCH,
  cornerRadiusMm: number(inputs, 'cornerRadiusIn', 0) * MM_PER_INCH
})
