import { useState } from 'react'
import { pinDimension, pinNote, pinnedSpan } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { ChoiceField } from '../../fields/ChoiceField'
import { usePlanState } from '../../plan/use-plan'
import { choosePinned } from '../../store/selection'
import { useApp, useAppStore } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { namedAnchors } from '../pinned/anchor-names'
import { StripPart } from './StripPart'

/** Pins dimensions and notes without a mouse; what is pinned stands in the list of things, to be chosen and changed. */
export function PinnedFields() {
  const pinned = useApp(({ design }) => design.dimensions.length + design.notes.length)
  return (
    <StripPart title={`Dimensions and notes (${pinned})`}>
      <NewPinned />
    </StripPart>
  )
}

function NewPinned() {
  const store = useAppStore()
  const channels = useApp((state) => state.design.channels)
  const lengthMm = usePlanState(({ live }) => live.sill.lengthMm)
  const depthMm = usePlanState(({ live }) => live.sill.depthMm)
  const edit = useEdit()
  const say = useSay()
  const anchors = namedAnchors(channels)
  const [fromKey, setFrom] = useState('left')
  const [toKey, setTo] = useState('right')
  const anchorOf = (key: string) => anchors.find((each) => each.value === key) ?? anchors[0]
  const [from, to] = [anchorOf(fromKey), anchorOf(toKey)]
  const span =
    from === undefined || to === undefined
      ? null
      : pinnedSpan({ channels }, { lengthMm, depthMm }, { from: from.anchor, to: to.anchor })
  const chooseLast = (of: 'dimensions' | 'notes'): void => {
    const made = store.getState().design[of].at(-1)
    if (made !== undefined) store.do.select(choosePinned(made.id))
  }
  return (
    <>
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
          chooseLast('dimensions')
        }}
      >
        Pin this dimension{span === null ? '' : `: ${say.length(span.valueMm)}`}
      </button>
      <button
        type="button"
        className="button"
        onClick={() => {
          edit.design('pin a note', (each) => ok(pinNote(each, lengthMm / 2, depthMm / 2, 'Note')))
          chooseLast('notes')
        }}
      >
        Pin a note
      </button>
    </>
  )
}
