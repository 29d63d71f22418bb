import type { OperationKind } from '../bench'
import type { NeedKind } from '../bill'
import type { Caution, SignalWord } from '../cautions'
import type { CutToolKind } from '../cutting'
import type { Place } from '../design'
import type { OpeningKind, ServiceOpening } from '../layout'
import type { MaterialId } from '../materials'
import type { Severity } from '../outcome'
import type { ClosureKind, JointMethod } from '../parts'
import type { SensitivityInput } from '../pricing'
import type { Stage } from '../reservoir'
import type { Hold, StackItem } from '../seating'
import type { Grade } from '../sources'
import type { Say } from './say'

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

export const STAGE_NAMES: Names<Stage> = {
  unrooted: 'Unrooted',
  rooting: 'Rooting',
  rooted: 'Rooted',
  full: 'Full grown'
}

export const STACK_NAMES: Names<StackItem['kind']> = {
  riser: 'Riser',
  collar: 'Collar',
  cup: 'Cup',
  'plant-collar': 'Plant collar'
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

export const SIGNAL_WORD_MEANINGS: Names<SignalWord> = {
  DANGER: 'Will cause death or serious injury if not avoided.',
  WARNING: 'Could cause death or serious injury if not avoided.',
  CAUTION: 'Could cause minor or moderate injury if not avoided.',
  NOTICE: 'About damage or quality, not injury.',
  'SAFETY INSTRUCTIONS': 'How to work safely.'
}

export const OPENING_NAMES: Names<OpeningKind> = {
  'fill-port': 'Fill port',
  overflow: 'Overflow',
  drain: 'Drain',
  'level-sight': 'Level sight',
  vent: 'Vent',
  plug: 'Plug'
}

export const FACE_NAMES: Names<ServiceOpening['face']> = {
  top: 'top',
  front: 'front',
  back: 'back',
  bottom: 'bottom',
  'datum-end': 'datum end',
  'far-end': 'far end'
}

export const CLOSURE_NAMES: Names<ClosureKind> = {
  'slip-cap': 'slip-over cap',
  'glued-plate': 'glued plate',
  plug: 'plug',
  'moulded-cap': 'moulded cap'
}

export const JOINT_NAMES: Names<JointMethod> = {
  'solvent-cement': 'solvent cement',
  'silicone-neutral': 'neutral-cure silicone',
  'silicone-acetoxy': 'acetoxy silicone',
  gasket: 'gasket',
  'push-fit': 'push fit',
  tape: 'tape'
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

export const WINDOW_NAMES: Names<Place['windowOpens']> = {
  inward: 'inward',
  outward: 'outward',
  slides: 'slides',
  fixed: 'does not open',
  unknown: 'not known'
}

export const YES_NO_NAMES: Names<Place['children']> = { yes: 'yes', no: 'no', unknown: 'not known' }

/** A caution's text with its figures put in, in the reader's units. */
export const cautionText = ({ text, figures }: Pick<Caution, 'text' | 'figures'>, say: Say): string =>
  text
    .replace('{filledWeight}', say.mass(figures.filledWeightG ?? 0))
    .replace('{sillLoad}', say.mass(figures.sillLoadG ?? 0))
