import type { SheetPart } from '../../../shared-model/sheet'

/** What each part of the sheet holds. */
export const PART_NAMES: Readonly<Record<SheetPart, string>> = {
  build: 'The build',
  cuts: 'Cut list',
  drilling: 'Drill sheets',
  collars: 'Collars, risers, sheets',
  templates: 'Templates 1:1',
  steps: 'Steps',
  cautions: 'Cautions',
  materials: 'Materials and shopping list',
  'first-fill': 'First fill',
  labels: 'Labels',
  sources: 'Sources',
  'batch-record': 'Batch record',
  'buyers-card': 'Buyer’s card'
}
