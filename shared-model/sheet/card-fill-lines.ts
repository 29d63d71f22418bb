import type { ChannelPlan } from '../plan'
import { STAGE_NAMES } from '../words'
import { belowTop } from './first-fill'
import type { Built } from './named'
import { cell, type Printed } from './printed'
import type { Column, TableBlock } from './sheet-data'

/** A row for each kind of channel: what it takes, its first line, and the highest line of each stage, down from the top. */
export const cardFillLines = (built: readonly Built[], show: Printed): TableBlock => {
  const stages = built[0]?.plan.water.stages ?? []
  const kinds = new Map<string, { readonly marks: string[]; readonly cells: readonly string[] }>()
  for (const { plan } of built) {
    const { water } = plan
    const cells = [
      show.volume(water.litres),
      show.length(water.fromTopMm),
      ...stages.map((_, index) => lineWords(plan, index, show))
    ]
    const key = cells.join('|')
    const kind = kinds.get(key) ?? { marks: [], cells }
    kind.marks.push(plan.mark)
    kinds.set(key, kind)
  }
  const right = (head: string, widthMm: number | 'rest'): Column => ({ head, align: 'right', widthMm })
  return {
    kind: 'table',
    name: '',
    heading: '',
    note: '',
    close: true,
    columns: [
      { head: 'Channel', align: 'left', widthMm: 'rest' },
      right('Solution', 26),
      right('First line', 26),
      ...stages.map(({ stage }) => right(STAGE_NAMES[stage], 24))
    ],
    rows: [
      [cell('air gap to keep'), cell(''), cell(''), ...stages.map(({ wantedGapMm }) => cell(show.length(wantedGapMm)))],
      ...[...kinds.values()].map(({ marks, cells: [litres = '', line = '', ...later] }) => [
        cell(kinds.size === 1 && built.length > 1 ? 'all' : marks.join(', '), true),
        cell(litres),
        cell(line, true),
        ...later.map((words) => cell(words))
      ])
    ]
  }
}

const lineWords = ({ water }: ChannelPlan, index: number, show: Printed): string => {
  const stage = water.stages[index]
  if (stage === undefined) return ''
  return stage.reachable ? show.length(belowTop(water, stage.safeLevelMm)) : 'riser first'
}
