import type { Design, Workshop } from '../design'
import type { Plan } from '../plan'
import { batchRecord } from './batch-record'
import { buyersCard } from './buyers-card'
import { cautionPages } from './caution-pages'
import { collarSheets } from './collar-sheets'
import { cutList } from './cut-list'
import { drillSheets } from './drill-sheets'
import { firstFillCard } from './first-fill'
import { frontSheet } from './front-sheet'
import { labelPage } from './labels'
import { materialPages } from './materials'
import { builtChannels } from './named'
import { type SheetOptions, WHOLE_SHEET } from './options'
import { printed } from './printed'
import type { SheetData, SheetSection, TitleBlock } from './sheet-data'
import { numbersOf, sourcePages, sourcesUsed } from './source-list'
import { stepPages } from './steps'
import { templatePages, templatesOf } from './template-page'
import { theRest } from './the-rest'

/**
 * The build sheet of a plan as plain data. The plan must come from this design and workshop; lengths are printed in the
 * workshop's units on its graduation, each with the exact figure behind it.
 */
export const buildSheet = (
  whole: Plan,
  design: Design,
  workshop: Workshop,
  options: Partial<SheetOptions> = {}
): SheetData => {
  const { parts, cost, batchNumber, doneToo } = { ...WHOLE_SHEET, ...options }
  const all = doneToo ? { ...whole, rest: null } : whole
  const plan = theRest(all)
  const show = printed(workshop)
  const built = builtChannels(all, design)
  const open = builtChannels(plan, design)
  const templates = parts.includes('templates') ? templatesOf(open, plan, design, show) : []
  const sources = sourcesUsed(plan)
  const sections: readonly SheetSection[] = [
    frontSheet(all, design, built, show),
    cutList(plan, design, workshop, show),
    drillSheets(plan, design, open, show),
    collarSheets(plan, design, show),
    templatePages(templates),
    stepPages(plan, show),
    cautionPages(plan, numbersOf(sources), show),
    materialPages(plan, show, cost),
    firstFillCard(all, design, built, show),
    labelPage(design, built, show),
    sourcePages(sources),
    batchRecord(plan, batchNumber),
    buyersCard(all, design, built, show, batchNumber)
  ]
  return {
    language: 'en',
    titleBlock: titleBlock(plan, design, workshop),
    sections: sections.filter((section) => parts.includes(section.part)),
    templates,
    baselineStepMm: workshop.shows.units === 'in' ? 50.8 : 50,
    shows: workshop.shows
  }
}

const titleBlock = (plan: Plan, design: Design, { shows }: Workshop): TitleBlock => ({
  title: design.title === '' ? 'Untitled build' : design.title,
  number: design.number,
  revision: design.revision,
  date: plan.on,
  maker: design.maker,
  documentType: plan.rest === null ? 'Build sheet' : 'Build sheet, the rest',
  units: shows.units === 'in' ? 'inches' : 'millimetres',
  graduation:
    shows.units === 'in'
      ? `to 1/${shows.inchGraduation} in`
      : `to ${String(shows.mmGraduation).replace('.', shows.decimalMark)} mm`,
  tolerance: 'ISO 2768-1 c unless stated',
  scale: 'as stated; templates 1:1',
  quantity: `${design.quantity}`
})
