import type { Profile } from '../../profile'
import type { EvidenceByField } from '../../sources'
import { MM_PER_INCH } from '../../units'
import { evidenceFor, FROM_MEMORY, PROFILE_FIELDS, printedIn } from './evidence'

/** Nominal, outside, least wall and average bore in inches, outside tolerance in millimetres. */
type Row = readonly [
  nominal: string,
  outsideIn: number,
  leastWallIn: number,
  averageBoreIn: number,
  toleranceMm: number
]

const SCHEDULE_40: readonly Row[] = [
  ['1-1/2', 1.9, 0.145, 1.592, 0.15],
  ['2', 2.375, 0.154, 2.049, 0.15],
  ['3', 3.5, 0.216, 3.042, 0.2],
  ['4', 4.5, 0.237, 3.998, 0.23],
  ['6', 6.625, 0.28, 6.031, 0.28]
]

const SCHEDULE_80: readonly Row[] = [
  ['1-1/2', 1.9, 0.2, 1.476, 0.15],
  ['2', 2.375, 0.218, 1.913, 0.15],
  ['3', 3.5, 0.3, 2.864, 0.2],
  ['4', 4.5, 0.337, 3.786, 0.23],
  ['6', 6.625, 0.432, 5.709, 0.28]
]

/** Thin-wall and SDR 35 sewer pipe: only the least wall is known; the average is taken 3 % thicker, as for schedule pipe. */
const WALL_FACTOR = 1.03
const SEWER: readonly (readonly [family: string, nominal: string, outsideIn: number, leastWallIn: number])[] = [
  ['D2729', '3', 3.25, 0.07],
  ['D2729', '4', 4.215, 0.075],
  ['SDR 35', '4', 4.215, 0.12],
  ['SDR 35', '6', 6.275, 0.18]
]

export const INCH_PIPES: readonly Profile[] = [
  ...SCHEDULE_40.map((row) => schedulePipe('40', row)),
  ...SCHEDULE_80.map((row) => schedulePipe('80', row)),
  ...SEWER.map(([family, nominal, outsideIn, leastWallIn]) => sewerPipe(family, nominal, outsideIn, leastWallIn))
]

function schedulePipe(schedule: string, [nominal, outsideIn, leastWallIn, averageBoreIn, toleranceMm]: Row): Profile {
  return pipe({
    id: `pvc-schedule-${schedule}-${nominal.replace('/', '-')}in`,
    name: `PVC pipe, Schedule ${schedule}, ${nominal} in`,
    family: `Schedule ${schedule} PVC pipe`,
    outsideMm: outsideIn * MM_PER_INCH,
    leastWallMm: leastWallIn * MM_PER_INCH,
    averageWallMm: ((outsideIn - averageBoreIn) / 2) * MM_PER_INCH,
    toleranceMm,
    evidence: {
      widthMm: printedIn('pvc-pipe-average-bore', `${outsideIn} in`, 'published'),
      heightMm: printedIn('pvc-pipe-average-bore', `${outsideIn} in`, 'published'),
      leastWallMm: printedIn('pvc-pipe-average-bore', `${leastWallIn} in`, 'published'),
      averageWallMm: printedIn('pvc-pipe-weight', `average bore ${averageBoreIn} in`),
      outsideToleranceMm: printedIn('pvc-pipe-tolerance', `+/- ${toleranceMm} mm`)
    }
  })
}

function sewerPipe(family: string, nominal: string, outsideIn: number, leastWallIn: number): Profile {
  const thin = family === 'D2729'
  const outside = thin ? FROM_MEMORY : printedIn('sdr35-pipe', `${outsideIn} in`)
  return pipe({
    id: `pvc-${thin ? 'thin-wall' : 'sdr35'}-${nominal}in`,
    name: thin ? `PVC drain pipe, thin wall, ${nominal} in` : `PVC sewer pipe, SDR 35, ${nominal} in`,
    family: thin ? 'thin-wall drain pipe (ASTM D2729)' : 'SDR 35 sewer pipe (ASTM D3034)',
    outsideMm: outsideIn * MM_PER_INCH,
    leastWallMm: leastWallIn * MM_PER_INCH,
    averageWallMm: leastWallIn * WALL_FACTOR * MM_PER_INCH,
    toleranceMm: 0.3,
    evidence: {
      widthMm: outside,
      heightMm: outside,
      leastWallMm: thin
        ? { ...FROM_MEMORY, printed: `${leastWallIn} in, agrees with the stiffness that the standard asks for` }
        : nominal === '4'
          ? printedIn('sdr35-pipe', '0.12 in')
          : FROM_MEMORY
    }
  })
}

interface Pipe {
  readonly id: string
  readonly name: string
  readonly family: string
  readonly outsideMm: number
  readonly leastWallMm: number
  readonly averageWallMm: number
  readonly toleranceMm: number
  readonly evidence: EvidenceByField
}

/** A round PVC pipe; what its row does not give is graded from memory. */
export function pipe(row: Pipe): Profile {
  return {
    id: row.id,
    name: row.name,
    family: row.family,
    shape: 'round',
    widthMm: row.outsideMm,
    heightMm: row.outsideMm,
    outsideToleranceMm: row.toleranceMm,
    averageWallMm: row.averageWallMm,
    leastWallMm: row.leastWallMm,
    cornerRadiusMm: 0,
    material: 'pvc',
    opaque: true,
    foodContactMark: null,
    evidence: evidenceFor(PROFILE_FIELDS, row.evidence)
  }
}
