import type { Plan } from '../plan'
import { source } from '../sources'
import { GRADE_NAMES } from '../words'
import { cell } from './printed'
import type { Cell, SheetSection } from './sheet-data'

/** What the grower entered has no entry in the register. */
const OWN_FIGURE: Cell = { text: 'You', under: 'A figure that you measured or entered' }

/** `[3]` for a source's id: its place in the list at the end of the sheet. */
export type SourceNumbers = (id: string) => string

/** The sources that this build's cautions and findings rest on, in the order in which they first come up. */
export const sourcesUsed = (plan: Plan): readonly string[] => [
  ...new Set([
    ...plan.cautions.flatMap((caution) => caution.sources),
    ...plan.findings.flatMap((finding) => (finding.source === undefined ? [] : [finding.source]))
  ])
]

export const numbersOf = (ids: readonly string[]): SourceNumbers => {
  const places = new Map(ids.map((id, index) => [id, index + 1]))
  return (id) => `[${places.get(id) ?? id}]`
}

export const sourcePages = (ids: readonly string[]): SheetSection => ({
  part: 'sources',
  number: '11',
  heading: 'Sources',
  startsPage: false,
  blocks: [
    {
      kind: 'table',
      name: 'sources',
      heading: '',
      note: '',
      columns: [
        { head: 'No.', align: 'right', widthMm: 12 },
        { head: 'Body and title', align: 'left', widthMm: 'rest' },
        { head: 'Year', align: 'left', widthMm: 21 },
        { head: 'Where', align: 'left', widthMm: 42 },
        { head: 'Grade', align: 'left', widthMm: 28 }
      ],
      rows: ids.map((id, index) => {
        const entry = source(id)
        return [
          cell(`${index + 1}`),
          entry === undefined ? OWN_FIGURE : { text: entry.body, under: entry.title },
          cell(entry?.year ?? ''),
          cell(entry?.where ?? ''),
          cell(GRADE_NAMES[entry?.grade ?? 'measured'])
        ]
      })
    }
  ]
})
