import type { SheetPart } from '../../shared-model/sheet'
import { Icon } from '../icons/Icon'
import { useActions } from '../store/use-app'

/** Takes these parts to the build sheet, ready to print. */
export function PrintParts({ label, parts }: { readonly label: string; readonly parts: readonly SheetPart[] }) {
  const { look } = useActions()
  return (
    <button type="button" className="button primary" onClick={() => look({ screen: 'sheet', sheetParts: parts })}>
      <Icon name="print" />
      {label}
    </button>
  )
}
