import type { PlanFindingCodes } from '../plan'
import { fieldName } from './field-name'
import { counted, put, type Wording } from './wording'

export const PLAN_WORDS: Wording<PlanFindingCodes> = {
  'workshop-built-in': ({ saws }) =>
    put(
      'Worked out with the built-in workshop',
      `It has every catalogue saw (${saws}), no offcuts and no prices. Enter your own to get a cost.`
    ),
  'nothing-to-build': () => put('There is no channel yet', 'Add one to the sill.'),
  'part-unmeasured': ({ part, fields, first }) =>
    put(
      `Measure ${part} before you cut`,
      `${counted(fields, 'size is', 'sizes are')} not from a published source, ${fieldName(first)} first of all.`
    ),
  'saw-not-owned': ({ saw }) => put(`${saw} is not among your saws`, 'Buy or borrow it, or choose one you own.'),
  'no-stock-on-offer': ({ profile, pieces }) =>
    put(
      `No bars of ${profile} on offer`,
      `${counted(pieces, 'piece')} cannot be laid out. Add the bar lengths you can buy, or an offcut.`
    )
}
