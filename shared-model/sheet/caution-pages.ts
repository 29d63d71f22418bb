import type { Caution, SignalWord } from '../cautions'
import type { Plan } from '../plan'
import { cautionText } from '../words'
import type { Printed } from './printed'
import type { Block, SheetSection } from './sheet-data'
import type { SourceNumbers } from './source-list'

const RANK: Readonly<Record<SignalWord, number>> = {
  DANGER: 0,
  WARNING: 1,
  CAUTION: 2,
  NOTICE: 3,
  'SAFETY INSTRUCTIONS': 4
}

/** The plan's cautions, gravest first, each with its signs and the numbers of its sources. */
export const cautionPages = (plan: Plan, numbers: SourceNumbers, show: Printed): SheetSection => ({
  part: 'cautions',
  number: '7',
  heading: 'Cautions',
  startsPage: false,
  blocks: [
    {
      kind: 'text',
      heading: '',
      strong: true,
      paragraphs: [
        'Local codes and the advice of licensed trades come first. Where they differ from this sheet, follow them.',
        'No load that a sill can bear is promised here: compare the filled weight with what your sill is known to carry.'
      ]
    },
    {
      kind: 'big',
      figures: [
        { name: 'Whole build, filled', value: show.mass(plan.load.filledG), note: 'as it stands on the sill' },
        {
          name: 'Heaviest channel, filled',
          value: show.mass(plan.load.lift.heaviestFilledG),
          note: liftWords[plan.load.lift.carryFilled]
        },
        { name: 'With grown plants', value: show.mass(plan.load.grownG), note: 'whole build' }
      ]
    },
    ...inOrder(plan.cautions).map((caution): Block => cautionBlock(caution, numbers, show))
  ]
})

const liftWords = {
  yes: 'one person can carry it filled',
  'fill-in-place': 'carry it empty, fill it in place',
  'not-by-one-person': 'not to be lifted by one person'
}

export const inOrder = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions
    .map((caution, index) => ({ caution, index }))
    .sort((a, b) => RANK[a.caution.signalWord] - RANK[b.caution.signalWord] || a.index - b.index)
    .map(({ caution }) => caution)

const cautionBlock = (caution: Caution, numbers: SourceNumbers, show: Printed): Block => ({
  kind: 'caution',
  signalWord: caution.signalWord,
  text: cautionText(caution, show.say),
  reason: caution.reason,
  signs: caution.iso7010.length === 0 ? '' : `ISO 7010: ${caution.iso7010.join(', ')}`,
  sources: caution.sources.length === 0 ? 'common practice, no source' : caution.sources.map(numbers).join(' '),
  bold: caution.bold
})
