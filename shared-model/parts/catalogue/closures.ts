import type { MaterialId } from '../../materials'
import { MM_PER_INCH } from '../../units'
import type { ClosureKind, EndClosure, JointMethod } from '../part'
import { evidenceFor, FROM_MEMORY } from './evidence'

interface Row {
  readonly id: string
  readonly name: string
  readonly kind: ClosureKind
  readonly joint: JointMethod
  readonly on: readonly MaterialId[]
  readonly shape: 'rectangle' | 'round'
  /** Outside width and height of the profile; null: cut to size. */
  readonly size: readonly [number, number] | null
  readonly adds: number
  readonly inside: number
  readonly outside: number
  readonly proud: number
  readonly material: MaterialId
  readonly mass: number
  readonly tolerance?: number
}

const METALS: readonly MaterialId[] = ['aluminium', 'galvanised-steel', 'zinc', 'copper']
const inch = (inches: number): number => inches * MM_PER_INCH

/** Sizes of fittings were not found in a source: depths and masses are from memory and ask to be measured. */
const CAPS: readonly Row[] = (
  [
    ['schedule-1-1-2in', 'Schedule 40 and 80, 1-1/2 in', inch(1.9), 28, 5, 40],
    ['schedule-2in', 'Schedule 40 and 80, 2 in', inch(2.375), 30, 5, 60],
    ['schedule-3in', 'Schedule 40 and 80, 3 in', inch(3.5), 48, 6, 170],
    ['schedule-4in', 'Schedule 40 and 80, 4 in', inch(4.5), 51, 7, 300],
    ['schedule-6in', 'Schedule 40 and 80, 6 in', inch(6.625), 76, 8, 800],
    ['thin-wall-3in', 'thin wall, 3 in', inch(3.25), 38, 2.5, 60],
    ['sewer-4in', 'thin wall and SDR 35, 4 in', inch(4.215), 45, 3, 110],
    ['sewer-6in', 'SDR 35, 6 in', inch(6.275), 70, 5, 300],
    ['metric-32', 'metric, 32 mm', 32, 22, 3, 12],
    ['metric-40', 'metric, 40 mm', 40, 24, 3, 18],
    ['metric-50', 'metric, 50 mm', 50, 28, 3, 28],
    ['metric-75', 'metric, 75 mm', 75, 35, 3, 55],
    ['metric-90', 'metric, 90 mm', 90, 40, 3, 80],
    ['metric-110', 'metric, 110 mm', 110, 48, 3.2, 120],
    ['metric-125', 'metric, 125 mm', 125, 54, 3.5, 170],
    ['metric-160', 'metric, 160 mm', 160, 65, 4, 320]
  ] as const
).map(([id, name, size, depth, thick, mass]) => ({
  id: `slip-cap-${id}`,
  name: `Slip cap, ${name}`,
  kind: 'slip-cap',
  joint: 'solvent-cement',
  on: ['pvc'],
  shape: 'round',
  size: [size, size],
  adds: thick + 1,
  inside: 0,
  outside: depth,
  proud: thick,
  material: 'pvc',
  mass
}))

const PLUGS: readonly Row[] = (
  [
    ['2in', '2 in pipe', inch(2.375), 80],
    ['3in', '3 in pipe', inch(3.5), 180],
    ['4in', '4 in pipe', inch(4.5), 300],
    ['110', '110 mm pipe', 110, 300]
  ] as const
).map(([id, name, size, mass]) => ({
  id: `rubber-plug-${id}`,
  name: `Rubber plug for ${name}`,
  kind: 'plug',
  joint: 'push-fit',
  on: ['pvc', 'abs', 'hdpe', 'pp'],
  shape: 'round',
  size: [size, size],
  adds: 12,
  inside: 30,
  outside: 0,
  proud: 0,
  material: 'rubber',
  mass
}))

const PLATES: readonly Row[] = [
  plate('glued-plate-pvc', 'PVC plate, solvent cement', 'solvent-cement', ['pvc'], 'rectangle'),
  plate('glued-plate-round-pvc', 'PVC plate for pipe, solvent cement', 'solvent-cement', ['pvc'], 'round'),
  plate('glued-plate-metal', 'PVC plate on metal, neutral-cure silicone', 'silicone-neutral', METALS, 'rectangle')
]

const MOULDED: readonly Row[] = [
  ...(
    [
      ['downspout-3in-plain', 'Downspout end cap, 2 x 3 in', 3, 2],
      ['downspout-4in-plain', 'Downspout end cap, 3 x 4 in', 4, 3],
      ['downspout-3in-corrugated', 'Downspout end cap, 2-3/8 x 3-1/4 in', 3.25, 2.375],
      ['downspout-4in-corrugated', 'Downspout end cap, 2-3/4 x 4-1/4 in', 4.25, 2.75]
    ] as const
  ).map(([id, name, long, short]) => ({
    ...moulded(`end-cap-${id}`, name, [inch(long), inch(short)], 'silicone-neutral', 'aluminium', 20),
    on: METALS
  })),
  moulded('post-cap-4in', 'Post cap, 4 x 4 in', [inch(4), inch(4)], 'solvent-cement', 'pvc', 70),
  moulded('post-cap-5in', 'Post cap, 5 x 5 in', [inch(5), inch(5)], 'solvent-cement', 'pvc', 110),
  moulded('end-cap-downpipe-65', 'Square downpipe end cap, 65 mm', [65, 65], 'solvent-cement', 'pvc', 35),
  moulded('end-cap-downpipe-80', 'Square downpipe end cap, 80 mm', [80, 80], 'solvent-cement', 'pvc', 50),
  moulded('end-cap-trunking-100x50', 'Trunking end cap, 100 x 50 mm', [100, 50], 'silicone-neutral', 'pvc', 15)
]

export const CLOSURES: readonly EndClosure[] = [...CAPS, ...PLUGS, ...PLATES, ...MOULDED].map((row) => ({
  id: row.id,
  name: row.name,
  kind: row.kind,
  joint: row.joint,
  holdsOn: {
    materials: row.on,
    shape: row.shape,
    widthMm: row.size?.[0] ?? null,
    heightMm: row.size?.[1] ?? null,
    toleranceMm: row.tolerance ?? (row.shape === 'round' ? 0.5 : 1.5)
  },
  addsLengthMm: row.adds,
  insideDepthMm: row.inside,
  outsideDepthMm: row.outside,
  proudMm: row.proud,
  material: row.material,
  massG: row.mass,
  evidence: evidenceFor(['addsLengthMm', 'insideDepthMm', 'outsideDepthMm', 'proudMm', 'massG'], {
    'holdsOn.toleranceMm': FROM_MEMORY
  })
}))

/** A plate cut to the outside of any section and glued over the cut end. */
function plate(
  id: string,
  name: string,
  joint: JointMethod,
  on: readonly MaterialId[],
  shape: 'rectangle' | 'round'
): Row {
  const [adds, inside, outside, proud] = [3, 0, 0, 0]
  return {
    id,
    name,
    kind: 'glued-plate',
    joint,
    on,
    shape,
    size: null,
    adds,
    inside,
    outside,
    proud,
    material: 'pvc',
    mass: 25
  }
}

function moulded(
  id: string,
  name: string,
  size: readonly [number, number],
  joint: JointMethod,
  material: MaterialId,
  mass: number
): Row {
  const [adds, inside, outside, proud] = [2, 0, 20, 2]
  return {
    id,
    name,
    kind: 'moulded-cap',
    joint,
    on: [material],
    shape: 'rectangle',
    size,
    adds,
    inside,
    outside,
    proud,
    material,
    mass
  }
}
