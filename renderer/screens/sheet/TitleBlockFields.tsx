import { setDesignField } from '../../../shared-model/design'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

const FIELDS = [
  ['number', 'Document number'],
  ['revision', 'Revision'],
  ['maker', 'Maker'],
  ['remarks', 'Remarks']
] as const

/** What stands in the title block. */
export function TitleBlockFields() {
  const design = useApp((state) => state.design)
  const edit = useEdit()
  return (
    <fieldset className="title-block-fields" aria-label="Title block">
      {FIELDS.map(([field, label]) => (
        <TextField
          key={field}
          label={label}
          path={field}
          value={design[field]}
          commit={(value) => edit.design('fill in the title block', (before) => setDesignField(before, field, value))}
        />
      ))}
    </fieldset>
  )
}
