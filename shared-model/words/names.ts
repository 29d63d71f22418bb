import type { OperationKind } from '../bench'
import type { NeedKind } from '../bill'
import type { Caution } from '../cautions'
import type { barSource, CutToolKind, PieceState } from '../cutting'
import type { OpeningKind } from '../layout'
import type { MaterialId } from '../materials'
import type { Severity } from '../outcome'
import type { SensitivityInput } from '../pricing'
import type { Stage } from '../reservoir'
import type { Hold } from '../seating'
import type { Grade } from '../sources'
import type { Say } from './say'
import { spaced } from './wording'

type Names<K extends string> = Readonly<Record<K, string>>

export const SEVERITY_NAMES: Names<Severity> = { stop: 'Stop', warn: 'Mind', note: 'Note' }

export const HOLD_NAMES: Names<Hold> = {
  'hangs-on-rim': 'hangs on its rim',
  wedges: 'wedges on its taper',
  'push-fit': 'push fit',
  'pressed-in': 'pressed in flush',
  'stands-on-face': 'stands on the face',
  'drops-through': 'drops through',
  'does-not-enter': 'does not go in'
}

export const BAR_SOURCE_NAMES: Names<ReturnType<typeof barSource>> = {
  new: 'new bar',
  rack: 'from the rack',
  piece: 'from a spoiled piece'
}

export const PIECE_STATE_NAMES: Names<PieceState> = {
  planned: 'to cut',
  cut: 'cut',
  drilled: 'cut and drilled',
  spoiled: 'spoiled'
}

export const STAGE_NAMES: Names<Stage> = {
  unrooted: 'Unrooted',
  rooting: 'Rooting',
  rooted: 'Rooted',
  full: 'Full grown'
}

export const OPERATION_NAMES: Names<OperationKind> = {
  mark: 'Mark lengths',
  cut: 'Cut to length',
  deburr: 'Deburr',
  'mark-holes': 'Mark hole centres',
  pilot: 'Drill pilots',
  saw: 'Saw holes',
  score: 'Score with the larger saw',
  'saw-inner': 'Saw the inner hole through',
  'saw-through': 'Finish with the larger saw',
  'cut-collar-blank': 'Cut blanks from sheet',
  'bore-cup': 'Bore cup bottoms',
  'cut-riser': 'Cut risers',
  wash: 'Wash',
  'fit-end': 'Fit ends',
  'fit-opening': 'Fit openings',
  cure: 'Let cure',
  'leak-test': 'Leak test',
  label: 'Label',
  pack: 'Pack'
}

export const OPENING_NAMES: Names<OpeningKind> = {
  'fill-port': 'Fill port',
  overflow: 'Overflow',
  drain: 'Drain',
  'level-sight': 'Level sight',
  vent: 'Vent',
  plug: 'Plug'
}

export const MATERIAL_NAMES: Names<MaterialId> = {
  pvc: 'PVC',
  abs: 'ABS',
  hdpe: 'HDPE',
  pp: 'PP',
  ps: 'polystyrene',
  pet: 'PET',
  acrylic: 'acrylic',
  aluminium: 'aluminium',
  'galvanised-steel': 'galvanised steel',
  zinc: 'zinc',
  copper: 'copper',
  'eva-foam': 'EVA foam',
  'pe-foam': 'PE foam',
  rubber: 'rubber',
  unknown: 'not known'
}

/** A material's name in a sentence, by its id. */
export const materialName = (id: string): string =>
  Object.hasOwn(MATERIAL_NAMES, id) ? MATERIAL_NAMES[id as MaterialId] : spaced(id)

export const GRADE_NAMES: Names<Grade> = {
  published: 'published',
  'published-in-part': 'published in part',
  measured: 'measured',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory'
}

export const CUT_TOOL_NAMES: Names<CutToolKind> = {
  hand_saw: 'hand saw',
  power_mitre: 'powered mitre saw',
  circular: 'circular saw',
  jigsaw: 'jigsaw',
  snips: 'snips',
  knife: 'knife',
  pipe_cutter: 'pipe cutter'
}

export const NEED_NAMES: Names<NeedKind> = {
  stock: 'Stock',
  sheet: 'Sheet',
  closure: 'End closures',
  cup: 'Cups',
  'riser-cup': 'Cups for risers',
  'plant-collar': 'Plant collars',
  sealant: 'Sealant',
  cement: 'Cement',
  support: 'Supports',
  'opening-fitting': 'Fittings',
  feed: 'Feed',
  label: 'Labels',
  packing: 'Packing',
  medium: 'Medium',
  coupling: 'Couplings'
}

export const SENSITIVITY_NAMES: Names<SensitivityInput> = {
  price: 'Price',
  material: 'Material',
  'hourly-rate': 'Hourly rate',
  'overhead-rate': 'Overhead per hour',
  'work-time': 'Time worked',
  'fee-share': 'Fee share',
  'fixed-fee': 'Fixed fee',
  'postage-cost': 'Postage paid',
  'postage-charged': 'Postage charged',
  'scrap-share': 'Scrap',
  'tax-share': 'Tax',
  'batch-fee': 'Fee for the batch'
}

/** A caution's text with its figures put in, in the reader's units. */
export const cautionText = ({ text, figures }: Pick<Caution, 'text' | 'figures'>, say: Say): string =>
  text
    .replace('{filledWeight}', say.mass(figures.filledWeightG ?? 0))
    .replace('{sillLoad}', say.mass(figures.sillLoadG ?? 0))
