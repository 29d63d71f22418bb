import { setDesignField } from '../../shared-model/design'
import { useEntry } from '../fields/use-entry'
import { useActions, useApp } from '../store/use-app'

/** The design's title, written where it is shown. */
export function TitleInput() {
  const title = useApp((state) => state.design.title)
  const { editDesign } = useActions()
  const entry = useEntry<string>({
    value: title,
    show: (value) => value,
    read: (text) => ({ ok: true, value: text }),
    commit: (value) => (editDesign('name the design', (design) => setDesignField(design, 'title', value)) ? 'no' : null)
  })
  return (
    <input
      data-path="title"
      className="title-input"
      aria-label="Title of the design"
      placeholder="Name this design"
      autoComplete="off"
      value={entry.text}
      aria-invalid={entry.error !== null}
      onChange={(event) => entry.change(event.target.value)}
      onBlur={entry.leave}
      onKeyDown={entry.key}
    />
  )
}
