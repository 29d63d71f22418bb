import { useState } from 'react'
import type { FigureShelf } from '../../../catalogue/figures'
import { addPartFrom } from '../../../catalogue/measured'
import { useOffered } from '../../../catalogue/use-offered'
import { ChoiceField } from '../../../fields/ChoiceField'
import { reachField } from '../../../frame/reach-field'
import { Icon } from '../../../icons/Icon'
import { useAppStore } from '../../../store/use-app'
import { useEditBoth } from '../../../store/use-edit-both'
import { SHELF_NAMES } from './shelf-names'

const SHELVES = [
  'profiles',
  'closures',
  'cups',
  'collars',
  'plantCollars',
  'saws'
] as const satisfies readonly FigureShelf[]

/** A part of your own, begun as a copy of the one that is nearest to it. */
export function AddPart() {
  const offered = useOffered()
  const store = useAppStore()
  const edit = useEditBoth()
  const [shelf, setShelf] = useState<FigureShelf>('cups')
  const [from, setFrom] = useState('')
  const list: readonly { readonly id: string; readonly name: string }[] = offered[shelf]
  const source = list.find((each) => each.id === from) ?? list[0]
  const add = (): void => {
    const part = offered[shelf].find((each) => each.id === source?.id)
    if (part === undefined) return
    const said = edit('add a part', (pair) => addPartFrom(pair, shelf, part, `${part.name}, mine`))
    if (said !== null) {
      store.do.look({ notice: { text: said } })
      return
    }
    const made = store.getState().design.parts[shelf].at(-1)
    if (made !== undefined) reachField(`parts.${made.id}`)
  }
  return (
    <fieldset className="fields add-part" aria-label="Add a part of your own">
      <ChoiceField
        label="Add a part of your own to"
        value={shelf}
        choices={SHELVES.map((value) => ({ value, label: SHELF_NAMES[value] }))}
        commit={setShelf}
      />
      <ChoiceField
        label="As a copy of"
        value={source?.id ?? ''}
        choices={list.map(({ id, name }) => ({ value: id, label: name }))}
        commit={setFrom}
      />
      <button type="button" className="button" disabled={source === undefined} onClick={add}>
        <Icon name="plus" />
        Add it, then measure it
      </button>
    </fieldset>
  )
}
