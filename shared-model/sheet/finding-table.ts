import type { Plan } from '../plan'
import { SEVERITY_NAMES, wordsFor } from '../words'
import { cell, type Printed, TICK } from './printed'
import type { TableBlock, TextBlock } from './sheet-data'

const RANK = { stop: 0, warn: 1, note: 2 } as const
const NOT_WORKED_OUT = 'Not worked out'
const BLOCKING: readonly string[] = [NOT_WORKED_OUT, SEVERITY_NAMES.stop]

/** So many different hints in one row: a row stays on one page. */
const MOST_HINTS = 8

/** At the head of a sheet whose design cannot be built as drawn; empty where it can. */
export const stopWords = (plan: Plan, show: Printed): readonly TextBlock[] => {
  const stops = merged(saidOf(plan, show)).filter(({ severity }) => BLOCKING.includes(severity)).length
  if (stops === 0) return []
  const open = stops === 1 ? 'one thing stands' : `${stops} things stand`
  return [
    {
      kind: 'text',
      heading: '',
      strong: true,
      paragraphs: [`Not ready to build: ${open} in the way, at the head of “Before you start”. Clear them first.`]
    }
  ]
}

interface Said {
  readonly severity: string
  readonly headline: string
  readonly todo: string
  /** The channel's mark; empty where it concerns the whole build. */
  readonly mark: string
}

/**
 * What the plan has to say about a design, the gravest first; a stop means that it cannot be built as drawn. What is the
 * same for several channels is said once, with their marks; what differs among them stands behind each mark.
 */
export const findingTable = (plan: Plan, show: Printed): readonly TableBlock[] => {
  const rows = merged(saidOf(plan, show))
  if (rows.length === 0) return []
  return [
    {
      kind: 'table',
      name: 'findings',
      heading: 'Before you start',
      note: '',
      columns: [
        { head: '☐', align: 'left', widthMm: 9 },
        { head: '', align: 'left', widthMm: 24 },
        { head: 'Channel', align: 'left', widthMm: 20 },
        { head: 'What, and what to do', align: 'left', widthMm: 'rest' }
      ],
      rows: rows.map(({ severity, marks, headline, hints }) => [
        TICK,
        cell(severity, true),
        cell(marks.join(', ')),
        { text: headline, under: hints.join('\n') }
      ])
    }
  ]
}

const saidOf = (plan: Plan, show: Printed): readonly Said[] => {
  const marks = new Map(plan.channels.map((channel) => [channel.channelId, channel.mark]))
  const markOf = (channelId: string | undefined): string =>
    channelId === undefined ? '' : (marks.get(channelId) ?? '')
  return [
    ...plan.problems.map((problem) => ({
      severity: NOT_WORKED_OUT,
      ...wordsFor(problem, show.say),
      mark: markOf(problem.where?.channelId)
    })),
    ...[...plan.findings]
      .sort((a, b) => RANK[a.severity] - RANK[b.severity])
      .map((finding) => ({
        severity: SEVERITY_NAMES[finding.severity],
        ...wordsFor(finding, show.say),
        mark: markOf(finding.where.channelId)
      }))
  ]
}

interface Row {
  readonly severity: string
  readonly headline: string
  readonly marks: readonly string[]
  readonly hints: readonly string[]
}

/** Rows of one severity and headline, in the order in which they first come up. */
const merged = (said: readonly Said[]): readonly Row[] => {
  const groups = new Map<string, Said[]>()
  for (const one of said) {
    const key = JSON.stringify([one.severity, one.headline])
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()].flatMap((group) => {
    const hints = new Map<string, string[]>()
    for (const { todo, mark } of group) hints.set(todo, [...(hints.get(todo) ?? []), mark])
    return inRows([...hints]).flatMap((some): Row[] => {
      const [first] = group
      if (first === undefined) return []
      const { severity, headline } = first
      return [{ severity, headline, marks: different(some.flatMap(([, marks]) => marks)), hints: hintsOf(some) }]
    })
  })
}

type Hint = readonly [todo: string, marks: readonly string[]]

const inRows = (hints: readonly Hint[]): readonly (readonly Hint[])[] =>
  hints.flatMap((_, index) => (index % MOST_HINTS === 0 ? [hints.slice(index, index + MOST_HINTS)] : []))

const hintsOf = (hints: readonly Hint[]): readonly string[] => {
  const several = different(hints.flatMap(([, marks]) => marks)).length > 1
  return hints.map(([todo, marks]) => {
    const who = different(marks)
    const times = who.length === 1 && marks.length > 1 ? ` (${marks.length} times)` : ''
    return hints.length > 1 && several && who.length > 0 ? `${who.join(', ')}: ${todo}${times}` : `${todo}${times}`
  })
}

/** Each mark once, in the order of the channels: marks are numbers counted up. */
const different = (marks: readonly string[]): readonly string[] =>
  [...new Set(marks)].filter((mark) => mark !== '').sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
