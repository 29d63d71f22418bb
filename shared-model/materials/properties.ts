import type { Evidence, Grade } from '../sources'
import type { Material } from './material'
import type { MaterialId } from './material-id'

const from = (source: string, printed: string, grade: Grade = 'published-in-part'): Evidence => ({
  grade,
  source,
  printed
})
const memory: Evidence = { grade: 'from-memory', source: 'memory' }
const practice: Evidence = { grade: 'common-practice', source: 'practice' }
const allFromMemory = {
  densityGPerCm3: memory,
  modulusShortMPa: memory,
  creepFactor: memory,
  expansionPerC: memory,
  mostServiceC: memory
}

/**
 * Properties of the materials that channels, parts and collars are made of. Inch-pound figures are turned once by the exact
 * factors; what no source gives is graded from memory. Where nothing long-term was found, the plastics take PVC-U's creep
 * factor or, where softer, HDPE's.
 */
export const MATERIALS: Readonly<Record<MaterialId, Material>> = {
  pvc: {
    id: 'pvc',
    name: 'Rigid PVC',
    densityGPerCm3: 1.4,
    modulusShortMPa: 2758,
    creepFactor: 0.375,
    expansionPerC: 70e-6,
    mostServiceC: 60,
    kind: 'plastic',
    evidence: {
      densityGPerCm3: from('pvc-12454-properties', '1.40 +/- 0.02'),
      modulusShortMPa: from('pvc-pipe-weight', '400 000 psi'),
      creepFactor: from('pvc-u-properties', '3200 MPa short, 1200 MPa at 50 years: 0.375'),
      expansionPerC: from('pvc-u-properties', '70e-6/C (another source: 2.9e-5/F = 52e-6/C; the larger holds)'),
      mostServiceC: from('pvc-12454-properties', '140 F')
    }
  },
  abs: {
    id: 'abs',
    name: 'ABS',
    densityGPerCm3: 1.08,
    modulusShortMPa: 2344.2,
    creepFactor: 0.375,
    expansionPerC: 108e-6,
    mostServiceC: 82.2,
    kind: 'plastic',
    evidence: {
      densityGPerCm3: from('thermoplastics-properties', '1.08'),
      modulusShortMPa: from('thermoplastics-properties', '340 000 psi'),
      creepFactor: { ...memory, printed: 'no long-term figure found; PVC-U taken' },
      expansionPerC: from('thermoplastics-properties', '6.0e-5/F'),
      mostServiceC: from('thermoplastics-properties', '180 F')
    }
  },
  hdpe: {
    id: 'hdpe',
    name: 'HDPE',
    densityGPerCm3: 0.95,
    modulusShortMPa: 537.8,
    creepFactor: 0.36,
    expansionPerC: 162e-6,
    mostServiceC: 71.1,
    kind: 'plastic',
    evidence: {
      densityGPerCm3: from('thermoplastics-properties', '0.95'),
      modulusShortMPa: from('pe-pipe-modulus', 'PE3XXX, 0.5 h: 78 000 psi', 'published'),
      creepFactor: from('pe-pipe-modulus', 'PE3XXX: 28 000 psi at 50 years over 78 000 psi', 'published'),
      expansionPerC: from('thermoplastics-properties', '9.0e-5/F'),
      mostServiceC: from('thermoplastics-properties', '160 F')
    }
  },
  pp: {
    id: 'pp',
    name: 'Polypropylene',
    densityGPerCm3: 0.905,
    modulusShortMPa: 1300,
    creepFactor: 0.36,
    expansionPerC: 150e-6,
    mostServiceC: 80,
    kind: 'plastic',
    evidence: allFromMemory
  },
  ps: {
    id: 'ps',
    name: 'Polystyrene',
    densityGPerCm3: 1.05,
    modulusShortMPa: 3000,
    creepFactor: 0.375,
    expansionPerC: 80e-6,
    mostServiceC: 60,
    kind: 'plastic',
    evidence: allFromMemory
  },
  pet: {
    id: 'pet',
    name: 'PET',
    densityGPerCm3: 1.37,
    modulusShortMPa: 2800,
    creepFactor: 0.375,
    expansionPerC: 70e-6,
    mostServiceC: 60,
    kind: 'plastic',
    evidence: allFromMemory
  },
  acrylic: {
    id: 'acrylic',
    name: 'Acrylic',
    densityGPerCm3: 1.19,
    modulusShortMPa: 3000,
    creepFactor: 0.375,
    expansionPerC: 75e-6,
    mostServiceC: 70,
    kind: 'plastic',
    evidence: allFromMemory
  },
  aluminium: {
    id: 'aluminium',
    name: 'Aluminium 3105',
    densityGPerCm3: 2.72,
    modulusShortMPa: 69000,
    creepFactor: 1,
    expansionPerC: 23.9e-6,
    mostServiceC: 100,
    kind: 'metal',
    evidence: {
      densityGPerCm3: from('aluminium-3105', '0.0983 lb/in3'),
      modulusShortMPa: from('aluminium-3105', '10.0e6 psi'),
      creepFactor: { ...practice, printed: 'no creep at room temperature' },
      expansionPerC: from('aluminium-3105-modulus', '23.9e-6/C (another source: 12.1e-6/F; the larger holds)'),
      mostServiceC: memory
    }
  },
  'galvanised-steel': {
    id: 'galvanised-steel',
    name: 'Galvanised steel',
    densityGPerCm3: 7.85,
    modulusShortMPa: 200000,
    creepFactor: 1,
    expansionPerC: 12e-6,
    mostServiceC: 100,
    kind: 'metal',
    evidence: {
      ...allFromMemory,
      modulusShortMPa: from('steel-beam-example', '200 GPa'),
      creepFactor: { ...practice, printed: 'no creep at room temperature' }
    }
  },
  zinc: {
    id: 'zinc',
    name: 'Titanium zinc',
    densityGPerCm3: 7.2,
    modulusShortMPa: 80000,
    creepFactor: 1,
    expansionPerC: 22e-6,
    mostServiceC: 100,
    kind: 'metal',
    evidence: allFromMemory
  },
  copper: {
    id: 'copper',
    name: 'Copper',
    densityGPerCm3: 8.94,
    modulusShortMPa: 117000,
    creepFactor: 1,
    expansionPerC: 17e-6,
    mostServiceC: 100,
    kind: 'metal',
    evidence: allFromMemory
  },
  'eva-foam': {
    id: 'eva-foam',
    name: 'EVA foam',
    densityGPerCm3: 0.07,
    modulusShortMPa: 1,
    creepFactor: 0.36,
    expansionPerC: 160e-6,
    mostServiceC: 50,
    kind: 'foam',
    evidence: { ...allFromMemory, densityGPerCm3: from('eva-density', 'at least 70 kg/m3') }
  },
  'pe-foam': {
    id: 'pe-foam',
    name: 'Polyethylene foam',
    densityGPerCm3: 0.035,
    modulusShortMPa: 0.5,
    creepFactor: 0.36,
    expansionPerC: 160e-6,
    mostServiceC: 50,
    kind: 'foam',
    evidence: allFromMemory
  },
  rubber: {
    id: 'rubber',
    name: 'Rubber',
    densityGPerCm3: 1.15,
    modulusShortMPa: 5,
    creepFactor: 0.5,
    expansionPerC: 160e-6,
    mostServiceC: 70,
    kind: 'rubber',
    evidence: allFromMemory
  },
  unknown: {
    id: 'unknown',
    name: 'Not known',
    densityGPerCm3: 1.47,
    modulusShortMPa: 500,
    creepFactor: 0.36,
    expansionPerC: 162e-6,
    mostServiceC: 40,
    kind: 'unknown',
    evidence: allFromMemory
  }
}

export const material = (id: MaterialId): Material => MATERIALS[id]

/** Modulus after years under steady load. */
export const modulusLongMPa = (id: MaterialId): number => MATERIALS[id].modulusShortMPa * MATERIALS[id].creepFactor

/** g/cm3. */
export const density = (id: MaterialId): number => MATERIALS[id].densityGPerCm3
