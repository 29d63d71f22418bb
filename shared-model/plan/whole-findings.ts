import { BUILT_IN_ID, type Design, type Workshop } from '../design'
import { unmeasuredFields } from '../parts'
import type { EvidenceByField } from '../sources'
import type { PlanFinding } from './codes'
import type { SiteTally } from './site-tally'

/** What only the whole of a design and a workshop can tell. */
export const wholeFindings = (
  design: Design,
  workshop: Workshop,
  tallies: readonly SiteTally[]
): readonly PlanFinding[] => {
  const used = usedParts(design, tallies)
  return [
    ...(design.channels.length === 0 ? [nothingToBuild] : []),
    ...(workshop.id === BUILT_IN_ID
      ? [
          {
            code: 'workshop-built-in' as const,
            severity: 'note' as const,
            figures: { saws: workshop.saws.length },
            where: { field: 'workshop' }
          }
        ]
      : []),
    ...sawsNotOwned(design, workshop, used),
    ...stockMissing(design, workshop),
    ...unmeasured(used)
  ]
}

const nothingToBuild: PlanFinding = {
  code: 'nothing-to-build',
  severity: 'note',
  figures: {},
  where: { field: 'channels' }
}

const sawsNotOwned = (design: Design, workshop: Workshop, { saws }: Used): readonly PlanFinding[] => {
  const owned = new Set(workshop.saws.map(({ saw }) => saw.id))
  return design.parts.saws
    .filter(({ id }) => saws.has(id) && !owned.has(id))
    .map(({ id, name, diameterMm }) => ({
      code: 'saw-not-owned',
      severity: 'warn',
      figures: { saw: name, diameterMm },
      where: { partId: id, field: 'saws' }
    }))
}

const stockMissing = (design: Design, workshop: Workshop): readonly PlanFinding[] =>
  design.parts.profiles.flatMap(({ id, name }): readonly PlanFinding[] => {
    const pieces = design.channels.filter(({ profileId }) => profileId === id).length * design.quantity
    const found = [...workshop.stock, ...workshop.rack].some(({ profileId }) => profileId === id)
    if (pieces === 0 || found) return []
    return [
      {
        code: 'no-stock-on-offer',
        severity: 'note',
        figures: { profile: name, pieces },
        where: { partId: id, field: 'stock' }
      }
    ]
  })

interface Used {
  readonly saws: ReadonlySet<string>
  readonly parts: readonly { readonly id: string; readonly name: string; readonly evidence: EvidenceByField }[]
}

const usedParts = (design: Design, tallies: readonly SiteTally[]): Used => {
  const { parts, channels } = design
  const seats = design.seats.filter(({ id }) => tallies.some((tally) => tally.seats.has(id)))
  const stacked = new Set(seats.flatMap(({ stack }) => stack.map(({ kind, partId }) => `${kind} ${partId}`)))
  const collars = parts.collars.filter(({ id }) => stacked.has(`collar ${id}`))
  const discs = parts.plantCollars.filter(({ id }) => stacked.has(`plant-collar ${id}`))
  const risers = parts.risers.filter(({ id }) => stacked.has(`riser ${id}`))
  const profileIds = new Set(channels.map(({ profileId }) => profileId))
  const closureIds = new Set(channels.flatMap(({ datumClosureId, farClosureId }) => [datumClosureId, farClosureId]))
  const saws = new Set([
    ...seats.map(({ sawId }) => sawId),
    ...collars.flatMap(({ outerSawId, innerSawId }) => [outerSawId, innerSawId]),
    ...discs.flatMap(({ sawId }) => sawId ?? []),
    ...risers.flatMap(({ opened }) => (opened.by === 'bore' ? [opened.sawId] : [])),
    ...channels.flatMap(({ openings }) => openings.flatMap(({ sawId }) => sawId ?? []))
  ])
  return {
    saws,
    parts: [
      ...parts.profiles.filter(({ id }) => profileIds.has(id)),
      ...parts.closures.filter(({ id }) => closureIds.has(id)),
      ...parts.cups.filter(({ id }) => stacked.has(`cup ${id}`)),
      ...risers.map(({ cup }) => cup),
      ...discs
    ]
  }
}

/** Sizes that no source publishes are starting values: they ask to be measured before the sheet is printed. */
const unmeasured = (used: Used): readonly PlanFinding[] => {
  const told = new Set<string>()
  return used.parts.flatMap((part): readonly PlanFinding[] => {
    // By letter: the order of a record's keys is not part of a document.
    const fields = [...unmeasuredFields(part)].sort()
    const [first] = fields
    if (first === undefined || told.has(part.id)) return []
    told.add(part.id)
    return [
      {
        code: 'part-unmeasured',
        severity: 'note',
        figures: { part: part.name, fields: fields.length, first },
        where: { partId: part.id, field: 'parts' }
      }
    ]
  })
}
