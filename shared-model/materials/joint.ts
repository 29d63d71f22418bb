import type { MaterialId } from './material-id'

export type JointMethodName =
  | 'solvent-cement'
  | 'silicone-neutral'
  | 'silicone-acetoxy'
  | 'gasket'
  | 'push-fit'
  | 'tape'

export type JointReason =
  | 'joint-holds'
  | 'joint-cement-needs-same-plastic'
  | 'joint-cement-only-pvc-abs'
  | 'joint-no-silicone-on-polyolefin'
  | 'joint-acetoxy-on-metal'
  | 'joint-no-tape-for-water'
  | 'joint-not-on-foam'
  | 'joint-material-unknown'

export interface JointVerdict {
  readonly holds: boolean
  readonly reason: JointReason
}

/**
 * Whether a joint method holds between two materials. Solvent cement melts PVC to PVC and ABS to ABS only; neither it nor
 * silicone grips polyolefins; on metal the silicone is of neutral cure, since acetoxy lets off acid; gaskets and push fits
 * work by pressure on any firm wall; tape never holds water. A material that is not known counts as one that does not hold.
 *
 * @source solvent-cement-method
 * @source practice
 */
export function jointHolds(method: JointMethodName, first: MaterialId, second: MaterialId): JointVerdict {
  const both = [first, second]
  if (method === 'tape') return no('joint-no-tape-for-water')
  if (both.some((id) => FOAMS.has(id))) return no('joint-not-on-foam')
  if (method === 'gasket' || method === 'push-fit') return HOLDS
  if (both.includes('unknown')) return no('joint-material-unknown')
  if (method === 'solvent-cement') return cement(first, second)
  if (both.some((id) => POLYOLEFINS.has(id))) return no('joint-no-silicone-on-polyolefin')
  return method === 'silicone-acetoxy' && both.some((id) => METALS.has(id)) ? no('joint-acetoxy-on-metal') : HOLDS
}

function cement(first: MaterialId, second: MaterialId): JointVerdict {
  if (!CEMENTED.has(first) || !CEMENTED.has(second)) return no('joint-cement-only-pvc-abs')
  return first === second ? HOLDS : no('joint-cement-needs-same-plastic')
}

const HOLDS: JointVerdict = { holds: true, reason: 'joint-holds' }
const no = (reason: JointReason): JointVerdict => ({ holds: false, reason })

const CEMENTED: ReadonlySet<MaterialId> = new Set(['pvc', 'abs'])
const POLYOLEFINS: ReadonlySet<MaterialId> = new Set(['hdpe', 'pp'])
const METALS: ReadonlySet<MaterialId> = new Set(['aluminium', 'galvanised-steel', 'zinc', 'copper'])
const FOAMS: ReadonlySet<MaterialId> = new Set(['eva-foam', 'pe-foam'])
