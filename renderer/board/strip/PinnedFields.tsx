import { useState } from 'react'
import { deletePinned, type PinnedNote, pinDimension, pinNote, pinnedSpan } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { TextField } from '../../fields/TextField'
import { useLivePlan } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { anchorKey, namedAnchors } from '../pinned/anchor-names'
import { StripPart } from './StripPart'

/** Dimensions and notes that stay on the board and print: to pin, read and take away without a mouse. */
export function PinnedFields() {
  const design = useApp((state) => state.design)
  const sill = useLivePlan().sill
  const edit = useEdit()
  const say = useSay()
  const anchors = namedAnchors(design.channels)
  const [fromKey, setFrom] = useState('left')
  const [toKey, setTo] = useState('right')
  const anchorOf = (key: string) => anchors.find((each) => each.value === key) ?? anchors[0]
  const [from, to] = [anchorOf(fromKey), anchorOf(toKey)]
  const span =
    from === undefined || to === undefined ? null : pinnedSpan(design, sill, { from: from.anchor, to: to.anchor })
  const nameOf = (key: string): string => anchors.find((each) => each.value === key)?.label ?? 'gone'
  const away = (id: string): string | null =>
    edit.design('take a pinned thing away', (each) => ok(deletePinned(each, id)))
  return (
    <StripPart title={`Dimensions and notes (${design.dimensions.length + design.notes.length})`}>
      {design.dimensions.map((each) => {
        const measured = pinnedSpan(design, sill, each)
        const name = `${nameOf(anchorKey(each.from))} to ${nameOf(anchorKey(each.to))}`
        return (
          <div key={each.id} className="button-row spread">
            <span className="small">
              {name}: <strong className="figure">{measured === null ? 'gone' : say.length(measured.valueMm)}</strong>
            </span>
            <button
              type="button"
              className="button small"
              aria-label={`Take away the dimension ${name}`}
              onClick={() => away(each.id)}
            >
              Take away
            </button>
          </div>
        )
      })}
      <div className="fields">
        <ChoiceField label="From" value={from?.value ?? ''} choices={anchors} commit={setFrom} />
        <ChoiceField label="To" value={to?.value ?? ''} choices={anchors} commit={setTo} />
      </div>
      <button
        type="button"
        className="button"
        disabled={span === null || span.valueMm === 0}
        onClick={() => {
          if (from === undefined || to === undefined) return
          edit.design('pin a dimension', (each) => ok(pinDimension(each, from.anchor, to.anchor)))
        }}
      >
        Pin this dimension{span === null ? '' : `: ${say.length(span.valueMm)}`}
      </button>
      {design.notes.map((note) => (
        <NoteFields key={note.id} note={note} away={() => away(note.id)} />
      ))}
      <button
        type="button"
        className="button"
        onClick={() =>
          edit.design('pin a note', (each) => ok(pinNote(each, sill.lengthMm / 2, sill.depthMm / 2, 'Note')))
        }
      >
        Pin a note
      </button>
    </StripPart>
  )
}

function NoteFields({ note, away }: { readonly note: PinnedNote; readonly away: () => void }) {
  const edit = useEdit()
  const set = (changes: Partial<Omit<PinnedNote, 'id'>>): string | null => {
    const { xMm, yMm, text } = { ...note, ...changes }
    return edit.design('change a note', (each) => ok(pinNote(deletePinned(each, note.id), xMm, yMm, text)))
  }
  return (
    <fieldset className="fields" aria-label={`Note: ${note.text}`}>
      <TextField label="Note" path={`notes.${note.id}`} value={note.text} commit={(text) => set({ text })} />
      <button type="button" className="button" aria-label={`Take away the note ${note.text}`} onClick={away}>
        Take away
      </button>
      <LengthField label="From the left" negative value={note.xMm} commit={(xMm) => set({ xMm })} />
      <LengthField label="From the front" negative value={note.yMm} commit={(yMm) => set({ yMm })} />
    </fieldset>
  )
}
