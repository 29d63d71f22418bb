import {
  deletePinned,
  editNote,
  type PinnedDimension,
  type PinnedNote,
  pinnedSpan,
  standOff,
  standOffBounds
} from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { LengthField } from '../../fields/LengthField'
import { TextField } from '../../fields/TextField'
import { usePlanState } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { usePinnedNames } from '../pinned/use-pinned-names'
import { StripPart } from './StripPart'

/** The figures of the pinned dimension or note that is chosen. */
export function PinnedThingFields({ id }: { readonly id: string }) {
  const dimension = useApp(({ design }) => design.dimensions.find((each) => each.id === id))
  const note = useApp(({ design }) => design.notes.find((each) => each.id === id))
  if (dimension !== undefined) return <DimensionFields dimension={dimension} />
  return note === undefined ? null : <NoteFields note={note} />
}

function DimensionFields({ dimension }: { readonly dimension: PinnedDimension }) {
  const edit = useEdit()
  const say = useSay()
  const names = usePinnedNames()
  const channels = useApp((state) => state.design.channels)
  const lengthMm = usePlanState(({ live }) => live.sill.lengthMm)
  const depthMm = usePlanState(({ live }) => live.sill.depthMm)
  const sill = { lengthMm, depthMm }
  const span = pinnedSpan({ channels }, sill, dimension)
  const { id } = dimension
  return (
    <StripPart title="Pinned dimension" open>
      <p className="small">
        {names(id)}: <strong className="figure">{span === null ? 'gone' : say.length(span.valueMm)}</strong>
      </p>
      <LengthField
        label="Line, from what it measures"
        negative
        {...(span === null ? {} : standOffBounds(span, sill))}
        value={dimension.offMm ?? 0}
        hint={dimension.offMm === undefined ? 'Beside it, in turn' : undefined}
        commit={(offMm) => edit.design('move a dimension line', (design) => ok(standOff(design, id, offMm)))}
      />
      <TakeAway id={id} name={`the dimension ${names(id)}`} />
    </StripPart>
  )
}

function NoteFields({ note }: { readonly note: PinnedNote }) {
  const edit = useEdit()
  const set = (changes: Partial<Omit<PinnedNote, 'id'>>): string | null =>
    edit.design('change a note', (design) => ok(editNote(design, note.id, changes)))
  return (
    <StripPart title="Pinned note" open>
      <TextField label="Note" path={`notes.${note.id}`} value={note.text} commit={(text) => set({ text })} />
      <div className="fields">
        <LengthField label="From the left" negative value={note.xMm} commit={(xMm) => set({ xMm })} />
        <LengthField label="From the front" negative value={note.yMm} commit={(yMm) => set({ yMm })} />
      </div>
      <TakeAway id={note.id} name={`the note ${note.text}`} />
    </StripPart>
  )
}

function TakeAway({ id, name }: { readonly id: string; readonly name: string }) {
  const edit = useEdit()
  return (
    <button
      type="button"
      className="button"
      aria-label={`Take away ${name}`}
      onClick={() => edit.design('take a pinned thing away', (design) => ok(deletePinned(design, id)))}
    >
      Take away
    </button>
  )
}
