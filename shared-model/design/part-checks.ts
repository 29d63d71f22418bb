import { checkCrop } from '../crops'
import { checkClosure, checkCollar, checkCup, checkPlantCollar, checkRiser, checkSaw } from '../parts'
import { checkProfile } from '../profile'
import type { Design } from './design'
import type { DocumentProblem } from './problem'
import type { Workshop } from './workshop'

interface PartProblem {
  readonly code: string
  readonly figures: object
  readonly where?: { readonly field?: string }
}

/** What cannot be about the parts of a design: measures that contradict each other, each with its field and both bounds. */
export const designParts = ({ parts, crops }: Design): readonly DocumentProblem[] => [
  ...checked('parts.profiles', parts.profiles, checkProfile),
  ...checked('parts.closures', parts.closures, checkClosure),
  ...checked('parts.cups', parts.cups, checkCup),
  ...checked('parts.risers', parts.risers, checkRiser),
  ...checked('parts.collars', parts.collars, checkCollar),
  ...checked('parts.plantCollars', parts.plantCollars, checkPlantCollar),
  ...checked('parts.saws', parts.saws, checkSaw),
  ...checked('crops', crops, checkCrop)
]

export const workshopParts = ({ parts, saws }: Workshop): readonly DocumentProblem[] => [
  ...checked('parts.profiles', parts.profiles, checkProfile),
  ...checked('parts.closures', parts.closures, checkClosure),
  ...checked('parts.cups', parts.cups, checkCup),
  ...checked('parts.plantCollars', parts.plantCollars, checkPlantCollar),
  ...checked(
    'saws',
    saws.map(({ saw }) => saw),
    checkSaw
  )
]

/** The rooms name a field from the part on; a document names it from its root. */
const checked = <T extends { readonly id: string }>(
  shelf: string,
  list: readonly T[],
  check: (part: T) => readonly PartProblem[]
): readonly DocumentProblem[] =>
  list.flatMap((part) =>
    check(part).map((problem): DocumentProblem => {
      const field = [shelf, part.id, problem.where?.field ?? ''].filter((each) => each !== '').join('.')
      const figures = {
        field,
        value: figure(problem.figures, ['valueMm', 'value', 'valueG']),
        least: figure(problem.figures, ['leastMm', 'least', 'leastG']),
        most: figure(problem.figures, ['mostMm', 'most', 'mostG'])
      }
      return { code: 'sizes-disagree', figures, where: { field } }
    })
  )

const figure = (figures: object, names: readonly string[]): number => {
  const found = Object.entries(figures).find(([name]) => names.includes(name))?.[1]
  return typeof found === 'number' ? found : 0
}
