import type { BenchStep, OperationKind } from '../bench'
import type { Caution } from './caution'

const DRILLING: readonly OperationKind[] = ['pilot', 'saw', 'score', 'saw-inner', 'saw-through']
const GLUING: readonly OperationKind[] = ['fit-end', 'fit-opening']
const BY_CATEGORY: Readonly<Record<string, readonly OperationKind[]>> = {
  drilling: [...DRILLING, 'cut-collar-blank', 'bore-cup'],
  cutting: ['cut'],
  finishing: ['deburr'],
  solvent: GLUING,
  foam: ['cut-collar-blank', 'score', 'saw-inner', 'saw-through'],
  handling: ['leak-test'],
  nutrient: ['label'],
  food: ['mark'],
  general: ['mark']
}

/** Steps of a caution where they are not those of its category. */
const BY_ID: Readonly<Record<string, readonly OperationKind[]>> = {
  'drill-eyes': [...DRILLING, 'cut', 'cut-collar-blank', 'bore-cup'],
  'drill-thin-metal': DRILLING,
  'drill-brittle': DRILLING,
  knife: ['cut-collar-blank', 'cut-riser'],
  noise: ['cut', ...DRILLING],
  'dust-plastic': ['cut', 'deburr'],
  'dust-metal': ['cut', 'deburr'],
  'cement-cure': ['cure'],
  'foam-fire': ['cut-collar-blank'],
  'foam-solvent': GLUING,
  'foam-cut': ['cut-collar-blank'],
  'leak-test': ['leak-test'],
  'vinyl-lead': ['cut', 'deburr']
}

/** The steps of the bench plan that a caution belongs to; none for one about the place where the build will stand. */
export const stepsOf = (caution: Pick<Caution, 'id' | 'category'>): readonly OperationKind[] =>
  BY_ID[caution.id] ?? BY_CATEGORY[caution.category] ?? []

/** The bench steps with the ids of the cautions that belong to each, in the order of the cautions. */
export const withCautions = (steps: readonly BenchStep[], cautions: readonly Caution[]): readonly BenchStep[] => {
  const byKind = new Map<OperationKind, string[]>()
  for (const caution of cautions)
    for (const kind of stepsOf(caution)) byKind.set(kind, [...(byKind.get(kind) ?? []), caution.id])
  return steps.map((step) => ({ ...step, cautionIds: byKind.get(step.kind) ?? [] }))
}
