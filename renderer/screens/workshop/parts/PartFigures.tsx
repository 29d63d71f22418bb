import { unmeasuredFields } from '../../../../shared-model/parts'
import type { EvidenceByField } from '../../../../shared-model/sources'
import { type FigureShelf, figuresOf } from '../../../catalogue/figures'
import { measurePart, renamePart } from '../../../catalogue/measured'
import { TextField } from '../../../fields/TextField'
import { Icon } from '../../../icons/Icon'
import { useApp } from '../../../store/use-app'
import { useEditBoth } from '../../../store/use-edit-both'
import { FigureField } from './FigureField'

/** A part as this list shows it: its figures by field. */
export interface ShownPart {
  readonly id: string
  readonly name: string
  readonly evidence: EvidenceByField
  readonly round: boolean
  readonly figures: Readonly<Record<string, number>>
}

/** One part with every figure and its grade; a reading written over a figure is kept as measured today. */
export function PartFigures({ shelf, part }: { readonly shelf: FigureShelf; readonly part: ShownPart }) {
  const today = useApp((state) => state.on)
  const edit = useEditBoth()
  const asking = unmeasuredFields(part).length
  return (
    <details className="part-measures" data-path={`parts.${part.id}`}>
      <summary>
        <span>{part.name}</span>
        {asking === 0 ? (
          <span className="tag good">
            <Icon name="good" />
            Known
          </span>
        ) : (
          <span className="tag note">
            <Icon name="note" />
            {asking} to measure
          </span>
        )}
      </summary>
      <div className="fields">
        {figuresOf(shelf, part.round).map((figure) => (
          <FigureField
            key={figure.field}
            figure={figure}
            partName={part.name}
            path={`parts.${shelf}.${part.id}.${figure.field}`}
            value={part.figures[figure.field] ?? 0}
            evidence={part.evidence[figure.field]}
            measure={(value) =>
              edit(`measure ${part.name}`, (pair) =>
                measurePart(pair, {
                  shelf,
                  id: part.id,
                  on: today,
                  figures:
                    part.round && figure.field === 'widthMm'
                      ? { widthMm: value, heightMm: value }
                      : { [figure.field]: value }
                })
              )
            }
          />
        ))}
        <TextField
          label="Name"
          value={part.name}
          commit={(name) => edit('rename a part', (pair) => renamePart(pair, shelf, part.id, name))}
        />
      </div>
    </details>
  )
}
