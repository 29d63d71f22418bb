import { rm } from 'node:fs/promises'
import { basename } from 'node:path'
import { type Design, defaultWorkshop, type Workshop } from '../../shared-model/design'
import { csvTables, docDefinition, type Paper, svgTemplate } from '../../shared-model/paper'
import { evaluate } from '../../shared-model/plan'
import { buildSheet, type SheetData } from '../../shared-model/sheet'
import { makeFolder } from '../files/make-folder'
import { saveFiles } from '../files/save-files'
import { writePdf } from '../services/pdf'
import { readDesignFile, readWorkshopFile } from './document-files'
import { HEADLESS_BUDGET } from './headless-work'
import { type SheetArguments, sheetArguments } from './sheet-arguments'

interface Says {
  readonly out: (line: string) => void
  readonly err: (line: string) => void
}

export interface SheetFile {
  readonly name: string
  readonly bytes: Uint8Array | string
}

/**
 * Writes a design's build sheet: the PDF, the card for the buyer on its own, a CSV file for each table and an SVG template
 * for each channel; prints the paths. Exit code 0: fine; 1: written, and the design has a `stop` finding or a part
 * that could not be worked out; 2: the input or
 * the folder cannot be used, and nothing is left behind.
 */
export const runSheet = async (argv: readonly string[], io: Says): Promise<number> => {
  const asked = sheetArguments(argv)
  if (typeof asked === 'string') return refused(io, asked)
  const design = await readDesignFile(asked.file)
  if (!design.ok) return refused(io, design.problem)
  const workshop =
    asked.workshop === null ? { ok: true as const, value: defaultWorkshop() } : await readWorkshopFile(asked.workshop)
  if (!workshop.ok) return refused(io, workshop.problem)
  const shop = shownAs(workshop.value, asked)
  const plan = evaluate(design.value, shop, asked.on, { budget: HEADLESS_BUDGET })
  const sheet = buildSheet(plan, design.value, shop, { cost: asked.prices })
  const files = await sheetFiles(sheet, design.value, asked.paper ?? shop.shows.paper)
  let made: string | undefined
  try {
    made = await makeFolder(asked.out)
    for (const path of await saveFiles(asked.out, files)) io.out(path)
  } catch (error) {
    // The folders that were made for it go too.
    if (made !== undefined) await rm(made, { recursive: true, force: true }).catch(() => undefined)
    return refused(io, `--out ${asked.out}: ${error instanceof Error ? error.message : 'cannot be written'}`)
  }
  return plan.totals.stops > 0 || plan.problems.length > 0 ? 1 : 0
}

const refused = (io: Says, words: string): number => {
  io.err(words)
  return 2
}

const shownAs = (workshop: Workshop, asked: SheetArguments): Workshop =>
  asked.units === null ? workshop : { ...workshop, shows: { ...workshop.shows, units: asked.units } }

/** Every file of a sheet, by name. */
const sheetFiles = async (sheet: SheetData, design: Design, paper: Paper): Promise<readonly SheetFile[]> => {
  const card = { ...sheet, sections: sheet.sections.filter((section) => section.part === 'buyers-card'), templates: [] }
  const stem = fileStem(design.title)
  return [
    { name: `${stem}-build-sheet.pdf`, bytes: await writePdf(docDefinition(sheet, { paper })) },
    { name: `${stem}-buyers-card.pdf`, bytes: await writePdf(docDefinition(card, { paper })) },
    ...csvTables(sheet).map(({ name, text }) => ({ name: `${stem}-${name}.csv`, bytes: text })),
    ...sheet.templates.map((template) => ({
      name: `${stem}-channel-${fileStem(template.mark)}${template.face === 'top' ? '' : `-${template.face}`}.svg`,
      bytes: svgTemplate(template, sheet.shows)
    }))
  ]
}

/** A title as part of a file's name: letters, figures and hyphens only. */
const fileStem = (title: string): string => {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60)
  return plain === '' ? 'build' : basename(plain)
}
