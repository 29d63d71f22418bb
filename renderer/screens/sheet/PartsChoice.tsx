import { SHEET_PARTS } from '../../../shared-model/sheet'
import { CheckField } from '../../fields/CheckField'
import { useActions, useApp } from '../../store/use-app'
import { PART_NAMES } from './part-names'

/** Which parts of the sheet are written. */
export function PartsChoice() {
  const parts = useApp((state) => state.view.sheetParts)
  const { look } = useActions()
  return (
    <fieldset aria-label="Parts">
      {SHEET_PARTS.map((part) => (
        <div key={part}>
          <CheckField
            label={PART_NAMES[part]}
            value={parts.includes(part)}
            commit={(wanted) =>
              look({ sheetParts: SHEET_PARTS.filter((each) => (each === part ? wanted : parts.includes(each))) })
            }
          />
        </div>
      ))}
      <button type="button" className="button plain small" onClick={() => look({ sheetParts: SHEET_PARTS })}>
        All parts
      </button>
    </fieldset>
  )
}
