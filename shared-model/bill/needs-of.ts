import type { BillInput, BillUnit, Need } from './bill-input'
import { jointNeeds } from './joint-needs'
import type { NeedKind } from './offer'
import { sheetNeeds, stockNeeds } from './plan-needs'

/**
 * What a batch needs, one entry for each thing to buy: stock and sheets as the cut and ring plans use them (so waste is real and
 * never a percentage on top), counted parts, sealant, cement, feed, labels and packing. Things not needed are left out.
 */
export function needsOf(input: BillInput): readonly Need[] {
  const counted = new Map<string, Need>()
  const add = (need: NeedKind, partId: string, name: string, unit: BillUnit, perUnit: number) => {
    if (!(perUnit > 0)) return
    const id = needId(need, partId)
    const sum = (counted.get(id)?.perUnit ?? 0) + perUnit
    counted.set(id, { id, need, partId, name, unit, perUnit: sum, needed: sum * input.quantity })
  }
  const parts = (need: NeedKind, of: readonly { partId: string; name: string; count: number }[]) => {
    for (const part of of) add(need, part.partId, part.name, 'piece', part.count)
  }
  // A cup that is opened into a riser is bought as a cup, in the same packs as the plants' cups of its kind.
  const plantCups = new Set(input.channels.flatMap((channel) => channel.cups.map((cup) => cup.partId)))
  for (const channel of input.channels) {
    parts('closure', channel.closures)
    parts('cup', channel.cups)
    for (const cup of channel.riserCups) parts(plantCups.has(cup.partId) ? 'cup' : 'riser-cup', [cup])
    parts('plant-collar', channel.plantCollars)
    parts('support', channel.supports)
    parts('opening-fitting', channel.fittings)
    parts('coupling', channel.couplings)
  }
  for (const joint of jointNeeds(input)) add(joint.need, joint.partId, joint.name, joint.unit, joint.amount)
  for (const amount of input.amounts) add(amount.need, amount.partId, amount.name, amount.unit, amount.amount)
  add('label', '', 'Labels', 'piece', input.labelsPerUnit)
  parts('packing', input.packing)
  return [...stockNeeds(input), ...sheetNeeds(input), ...counted.values()]
}

export const needId = (need: NeedKind, partId: string): string => (partId === '' ? need : `${need}:${partId}`)
