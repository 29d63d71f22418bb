import type { Design, Workshop } from '../../shared-model/design'
import type { Plan } from '../../shared-model/plan'
import { type Block, buildSheet, type SheetData } from '../../shared-model/sheet'

/** A document of its own beside the build sheet, in the same frame: labels, a quote. */
export function smallSheet(
  of: { readonly plan: Plan; readonly design: Design; readonly workshop: Workshop },
  documentType: string,
  blocks: readonly Block[]
): SheetData {
  const sheet = buildSheet(of.plan, of.design, of.workshop, { parts: [] })
  return {
    ...sheet,
    titleBlock: { ...sheet.titleBlock, documentType },
    sections: [{ part: 'labels', number: '', heading: documentType, startsPage: false, blocks }],
    templates: []
  }
}
