import { unmeasuredFields } from '../../../../shared-model/parts'
import type { EvidenceByField } from '../../../../shared-model/sources'
import type { FigureShelf } from '../../../catalogue/figures'
import { useApp } from '../../../store/use-app'
import { AddPart } from './AddPart'
import { PartFigures, type ShownPart } from './PartFigures'
import { SHELF_NAMES } from './shelf-names'

/** Every part of the design with its figures, how well each is known, and the place to write a caliper reading. */
export function PartsFields() {
  const parts = useApp((state) => state.design.parts)
  const cups = [
    ...new Map([...parts.risers.map((riser) => riser.cup), ...parts.cups].map((cup) => [cup.id, cup])).values()
  ]
  const shelves: readonly (readonly [FigureShelf, readonly ShownPart[]])[] = [
    ['profiles', parts.profiles.map(shown)],
    ['closures', parts.closures.map(shown)],
    ['cups', cups.map(shown)],
    ['collars', parts.collars.map(shown)],
    ['plantCollars', parts.plantCollars.map(shown)],
    ['saws', parts.saws.map(shown)]
  ]
  const asking = shelves.flatMap(([, list]) => list).filter((part) => unmeasuredFields(part).length > 0).length
  return (
    <section className="part" aria-label="Parts and measures" data-path="parts">
      <div className="part-head">
        <h2>Parts and measures</h2>
        <span className="quiet small">{asking === 0 ? 'Nothing to measure.' : `To measure: ${asking}`}</span>
      </div>
      <p className="quiet small">
        The parts of this design. Write what your caliper says over a figure: it counts as measured today, and the part
        is kept for your next design.
      </p>
      <div className="part-shelves">
        {shelves.map(([shelf, list]) =>
          list.length === 0 ? null : (
            <div key={shelf}>
              <h3>{SHELF_NAMES[shelf]}</h3>
              {list.map((part) => (
                <PartFigures key={part.id} shelf={shelf} part={part} />
              ))}
            </div>
          )
        )}
      </div>
      <AddPart />
    </section>
  )
}

interface Figured {
  readonly id: string
  readonly name: string
  readonly evidence: EvidenceByField
}

const shown = (part: Figured): ShownPart => ({
  id: part.id,
  name: part.name,
  evidence: part.evidence,
  round: 'shape' in part && part.shape === 'round',
  figures: Object.fromEntries(
    Object.entries(part).filter((entry): entry is [string, number] => typeof entry[1] === 'number')
  )
})
