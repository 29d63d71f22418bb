import type { Design } from './design'
import type { DocumentProblem } from './problem'
import type { Workshop } from './workshop'

type Listed = readonly { readonly id: string }[]

/** Ids that stand twice, ids that lead nowhere, and sizes that contradict each other. */
export const designReferences = (design: Design): readonly DocumentProblem[] => {
  const { parts } = design
  const problems: DocumentProblem[] = [
    ...twice(design.channels, 'channels'),
    ...twice(design.seats, 'seats'),
    ...twice(design.crops, 'crops'),
    ...twice(design.sill.obstacles, 'sill.obstacles'),
    ...twice([...design.dimensions, ...design.notes], 'dimensions'),
    // Both are cut from sheet, and the sheet plan knows them by their ids alone.
    ...twice([...parts.collars, ...parts.plantCollars], 'parts.plantCollars'),
    ...Object.entries(parts).flatMap(([shelf, list]) => twice(list, `parts.${shelf}`))
  ]
  const seek = (list: Listed, what: string) => {
    const known = new Set(list.map((each) => each.id))
    return (id: string | null, field: string): void => {
      if (id !== null && !known.has(id))
        problems.push({ code: 'reference-dangling', figures: { field, id, wanted: what }, where: { field } })
    }
  }
  const profile = seek(parts.profiles, 'profile')
  const closure = seek(parts.closures, 'end closure')
  const saw = seek(parts.saws, 'hole saw')
  const seat = seek(design.seats, 'seat')
  const crop = seek(design.crops, 'crop')
  for (const channel of design.channels) {
    const at = `channels.${channel.id}`
    problems.push(
      ...twice([...channel.sites, ...channel.openings], `${at}.sites`),
      ...twice(channel.supports, `${at}.supports`)
    )
    profile(channel.profileId, `${at}.profileId`)
    closure(channel.datumClosureId, `${at}.datumClosureId`)
    closure(channel.farClosureId, `${at}.farClosureId`)
    for (const site of channel.sites) {
      seat(site.seatId, `${at}.sites.${site.id}.seatId`)
      crop(site.cropId, `${at}.sites.${site.id}.cropId`)
    }
    for (const opening of channel.openings) saw(opening.sawId, `${at}.openings.${opening.id}.sawId`)
  }
  const shelves = {
    riser: seek(parts.risers, 'riser'),
    collar: seek(parts.collars, 'collar'),
    cup: seek(parts.cups, 'cup'),
    'plant-collar': seek(parts.plantCollars, 'plant collar')
  }
  for (const each of design.seats) {
    saw(each.sawId, `seats.${each.id}.sawId`)
    each.stack.forEach((item, k) => {
      shelves[item.kind](item.partId, `seats.${each.id}.stack.${k}.partId`)
    })
  }
  for (const each of parts.collars) {
    saw(each.outerSawId, `parts.collars.${each.id}.outerSawId`)
    saw(each.innerSawId, `parts.collars.${each.id}.innerSawId`)
  }
  for (const each of parts.risers)
    if (each.opened.by === 'bore') saw(each.opened.sawId, `parts.risers.${each.id}.opened.sawId`)
  for (const each of parts.plantCollars) saw(each.sawId, `parts.plantCollars.${each.id}.sawId`)
  problems.push(...danglingAnchors(design), ...totals(design), ...benchTwice(design), ...benchTooLong(design))
  return problems
}

export const workshopReferences = (workshop: Workshop): readonly DocumentProblem[] => {
  const lists: readonly (readonly [string, Listed])[] = [
    ['saws', workshop.saws.map((each) => each.saw)],
    ['drills', workshop.drills],
    ['stock', workshop.stock],
    ['rack', workshop.rack],
    ['sheets', workshop.sheets],
    ['offers', workshop.offers],
    ['pricing.ways', workshop.pricing.ways],
    ...Object.entries(workshop.parts).map(([shelf, list]): readonly [string, Listed] => [`parts.${shelf}`, list])
  ]
  return lists.flatMap(([field, list]) => twice(list, field))
}

/** Most pieces and most sites of a whole batch: beyond them a plan would not be worked out in a bounded time. */
export const MOST_BATCH_PIECES = 20_000
export const MOST_SITES_IN_ALL = 6_000

const totals = (design: Design): readonly DocumentProblem[] => {
  const pieces = design.quantity * design.channels.length
  const sites = design.channels.reduce((sum, each) => sum + each.sites.length, 0)
  const count = (field: string, found: number, most: number): readonly DocumentProblem[] =>
    found <= most
      ? []
      : [{ code: 'count-out-of-range', figures: { field, count: found, least: 0, most }, where: { field } }]
  return [...count('quantity', pieces, MOST_BATCH_PIECES), ...count('channels', sites, MOST_SITES_IN_ALL)]
}

const twice = (list: Listed, field: string): readonly DocumentProblem[] => {
  const seen = new Set<string>()
  const again = new Set<string>()
  for (const { id } of list) {
    if (seen.has(id)) again.add(id)
    seen.add(id)
  }
  return [...again].map((id) => ({
    code: 'id-twice',
    figures: { field: `${field}.${id}`, id },
    where: { field: `${field}.${id}` }
  }))
}

/** A bar stands once, and so does a piece, unless it is spoiled. */
const benchTwice = ({ atBench }: Design): readonly DocumentProblem[] => {
  if (atBench === undefined) return []
  const good = atBench.bars.flatMap(({ pieces }) => pieces.filter(({ state }) => state !== 'spoiled'))
  return [
    ...twice(
      atBench.bars.map(({ key }) => ({ id: key })),
      'atBench.bars'
    ),
    ...twice(
      good.map(({ pieceId }) => ({ id: pieceId })),
      'atBench.bars.pieces'
    ),
    ...twice(
      atBench.pins.map(({ pieceId }) => ({ id: pieceId })),
      'atBench.pins'
    )
  ]
}

/** The longest length in a document, as its fields say. */
const MOST_MM = 20_000

/** What is cut from a bar was there: trim and pieces together are no longer than it, by more than arithmetic. */
const benchTooLong = ({ atBench }: Design): readonly DocumentProblem[] =>
  (atBench?.bars ?? []).flatMap(({ key, lengthMm, trimMm, pieces }): readonly DocumentProblem[] => {
    const least = pieces.reduce((sum, piece) => sum + piece.lengthMm, trimMm)
    const field = `atBench.bars.${key}.lengthMm`
    if (lengthMm >= least - 0.001) return []
    return [{ code: 'field-out-of-range', figures: { field, value: lengthMm, least, most: MOST_MM }, where: { field } }]
  })

const danglingAnchors = (design: Design): readonly DocumentProblem[] =>
  design.dimensions.flatMap((dimension) =>
    (['from', 'to'] as const).flatMap((end): readonly DocumentProblem[] => {
      const anchor = dimension[end]
      if (anchor.kind === 'sill') return []
      const field = `dimensions.${dimension.id}.${end}`
      const channel = design.channels.find((each) => each.id === anchor.channelId)
      if (channel === undefined)
        return [
          { code: 'reference-dangling', figures: { field, id: anchor.channelId, wanted: 'channel' }, where: { field } }
        ]
      if (anchor.kind === 'channel' || channel.sites.some((each) => each.id === anchor.siteId)) return []
      return [{ code: 'reference-dangling', figures: { field, id: anchor.siteId, wanted: 'site' }, where: { field } }]
    })
  )
