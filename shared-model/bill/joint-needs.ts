import { mm } from '../units'
import type { BillInput, JointNeed } from './bill-input'
import { CEMENT_JOINTS, cementPerJointMl, jointsPerQuart } from './cement-joints'
import { sealantVolume } from './sealant-run'

export interface JointAmount {
  readonly need: 'sealant' | 'cement'
  readonly partId: string
  readonly name: string
  readonly unit: 'mL' | 'mm'
  readonly amount: number
}

/** What seals the joints of one unit: sealant and tape by wetted length, cement (and primer) by joints per quart. */
export const jointNeeds = (input: BillInput): readonly JointAmount[] =>
  input.channels.flatMap((channel) => channel.joints.flatMap((joint) => ofJoint(joint, input)))

function ofJoint(joint: JointNeed, input: BillInput): readonly JointAmount[] {
  if (joint.method === 'solvent-cement') return cement(joint, input.primer)
  if (joint.method === 'tape')
    return [{ need: 'sealant', partId: 'tape', name: 'Tape', unit: 'mm', amount: joint.wettedMm }]
  if (joint.method !== 'silicone-neutral' && joint.method !== 'silicone-acetoxy') return []
  const volume = sealantVolume(input.bead, mm(joint.wettedMm))
  const name = joint.method === 'silicone-neutral' ? 'Neutral-cure silicone' : 'Acetoxy silicone'
  return volume.ok
    ? [{ need: 'sealant', partId: joint.method, name, unit: 'mL', amount: volume.value / MM3_PER_ML }]
    : []
}

const MM3_PER_ML = 1000

function cement(joint: JointNeed, primer: boolean): readonly JointAmount[] {
  const listed = jointsPerQuart(mm(joint.outsideMm))
  const size = listed.ok ? listed.value : CEMENT_JOINTS.at(-1)
  if (size === undefined) return []
  const amount = cementPerJointMl(size)
  const tins = [{ need: 'cement', partId: 'solvent-cement', name: 'Solvent cement', unit: 'mL', amount }] as const
  if (!primer) return tins
  return [...tins, { need: 'cement', partId: 'primer', name: 'Primer', unit: 'mL', amount: amount / 2 }]
}
