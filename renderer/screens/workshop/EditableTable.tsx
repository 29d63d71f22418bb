import { type ClipboardEvent, type KeyboardEvent, type ReactNode, useState } from 'react'
import { Icon } from '../../icons/Icon'
import { NotTaken } from './rows/NotTaken'
import type { StartCell } from './rows/read-rows'

export interface EditableColumn<T> {
  readonly head: string
  /** A figure: stands to the right. */
  readonly figure?: boolean
  readonly cell: (row: T) => ReactNode
}

export interface EditableTableProps<T> {
  /** The list's name in the workshop: its rows are found by it. */
  readonly list: string
  readonly caption: string
  readonly says?: string
  readonly columns: readonly EditableColumn<T>[]
  readonly rows: readonly T[]
  readonly keyOf: (row: T) => string
  readonly nameOf: (row: T) => string
  readonly remove: (row: T) => unknown
  readonly empty: string
  readonly add?: ReactNode
  /** Takes cells pasted from a spreadsheet, from this cell on; gives back why nothing was taken. */
  readonly paste?: (text: string, from: StartCell) => readonly string[]
  /** Below the rows. */
  readonly below?: ReactNode
}

/**
 * A list that is edited where it stands: Tab goes along a row, Enter takes the figure and goes down its column, and cells of a
 * spreadsheet are pasted over those from the one that has the mark.
 */
export function EditableTable<T>(props: EditableTableProps<T>) {
  const { list, caption, says, columns, rows, keyOf, nameOf, remove, empty, add, paste, below } = props
  const [errors, setErrors] = useState<readonly string[]>([])
  const pasted = (event: ClipboardEvent<HTMLTableElement>): void => {
    const text = event.clipboardData.getData('text/plain')
    const from = cellOf(event.target)
    // One cell's words go where the mark stands, as anywhere.
    if (from === null || paste === undefined || !/[\t\n]/.test(text.replace(/\r?\n$/, ''))) {
      setErrors([])
      return
    }
    event.preventDefault()
    setErrors(paste(text, from))
  }
  return (
    <section className="part" aria-label={caption} data-path={list}>
      <div className="part-head">
        <h2>{caption}</h2>
        {add}
      </div>
      {says === undefined ? null : <p className="quiet small">{says}</p>}
      {rows.length === 0 ? (
        <p className="quiet">{empty}</p>
      ) : (
        <div className="table-holder">
          <table
            className="list"
            aria-label={caption}
            onKeyDown={goDown}
            onPaste={paste === undefined ? undefined : pasted}
          >
            <thead>
              <tr>
                {columns.map((column) => (
                  <th key={column.head} scope="col" className={column.figure === true ? 'number' : undefined}>
                    {column.head}
                  </th>
                ))}
                <th scope="col">
                  <span className="hidden-text">Take away</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={keyOf(row)} data-path={`${list}.${keyOf(row)}`}>
                  {columns.map((column) => (
                    <td key={column.head} className={column.figure === true ? 'number' : undefined}>
                      {column.cell(row)}
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      className="button plain"
                      aria-label={`Take ${nameOf(row)} away`}
                      title="Take away"
                      onClick={() => remove(row)}
                    >
                      <Icon name="remove" />
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <NotTaken errors={errors} />
      {below}
    </section>
  )
}

function cellOf(target: EventTarget): StartCell | null {
  const cell = target instanceof Element ? target.closest('td') : null
  const row = cell?.parentElement
  if (cell === null || !(row instanceof HTMLTableRowElement)) return null
  return { row: row.sectionRowIndex, column: cell.cellIndex }
}

function goDown(event: KeyboardEvent<HTMLTableElement>): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return
  const cell = event.target.closest('td')
  const below = cell?.parentElement?.nextElementSibling?.children[cell.cellIndex]
  const next = below?.querySelector('input')
  if (next === null || next === undefined) return
  // The figure is taken first; the field below is then as it stands after it.
  requestAnimationFrame(() => {
    next.focus()
    next.select()
  })
}
