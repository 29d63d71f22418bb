import { useId, useState } from 'react'
import { ok } from '../../../../shared-model/outcome'
import { hostText } from '../../../documents/open-documents'
import { useServices } from '../../../documents/use-documents'
import { askForFile } from '../../../host/download'
import { MOST_FILE_BYTES } from '../../../host/host'
import { useAppStore } from '../../../store/use-app'
import { useEdit } from '../../../store/use-edit'
import { NotTaken } from './NotTaken'
import { readRows } from './read-rows'
import type { RowsFor, RowTable } from './row-table'
import { writeRows } from './write-rows'

interface RowsInOutProps<T extends { readonly id: string }> {
  readonly what: string
  readonly table: RowTable<T>
  readonly rowsFor: RowsFor
}

/** Rows from a spreadsheet into a list of the workshop and back. Rows with an error change nothing and stay in the box. */
export function RowsInOut<T extends { readonly id: string }>({ what, table, rowsFor }: RowsInOutProps<T>) {
  const { host } = useServices()
  const store = useAppStore()
  const edit = useEdit()
  const id = useId()
  const [text, setText] = useState('')
  const [errors, setErrors] = useState<readonly string[]>([])
  const notice = (said: string): void => store.do.look({ notice: { text: said } })
  const take = (): void => {
    const read = readRows(text, table, store.getState().workshop, rowsFor)
    if (!read.ok) {
      setErrors(read.problem)
      return
    }
    const refused = edit.workshop(`take rows into ${what}`, () => ok(read.value.workshop))
    setErrors(refused === null ? [] : [refused])
    if (refused !== null) return
    setText('')
    notice(`${read.value.added} added, ${read.value.changed} changed.`)
  }
  const readFile = async (): Promise<void> => {
    const file = await askForFile('.csv,.tsv,.txt,text/csv')
    if (file === null) return
    if (file.size > MOST_FILE_BYTES) return setErrors([`${file.name} is too large.`])
    setText(await file.text())
    setErrors([])
  }
  const write = async (): Promise<void> => {
    const bytes = new TextEncoder().encode(writeRows(table, rowsFor))
    const written = await host.writeOut(`${table.name}.csv`, 'text/csv', bytes)
    if (written.ok) notice(`Written: ${written.value}`)
    else if (written.problem.code !== 'given-up') notice(hostText(written.problem))
  }
  return (
    <details className="rows-in-out">
      <summary>Rows from and to a spreadsheet</summary>
      <div className="strip-body">
        <div className="field">
          <label htmlFor={id}>Rows of {what}, pasted or read from a file</label>
          <textarea
            id={id}
            rows={5}
            spellCheck={false}
            value={text}
            aria-invalid={errors.length > 0}
            aria-describedby={`${id}-note`}
            onChange={(event) => {
              setText(event.target.value)
              setErrors([])
            }}
          />
          <p className="hint" id={`${id}-note`}>
            Columns: {table.columns.map(({ head }) => head).join(', ')}. With a row of heads they may stand in any
            order; a row with the id of one that is here changes it, others are added.
          </p>
        </div>
        <NotTaken errors={errors} />
        <div className="button-row">
          <button type="button" className="button" disabled={text.trim() === ''} onClick={take}>
            Take the rows
          </button>
          <button type="button" className="button" onClick={() => void readFile()}>
            Read a CSV file…
          </button>
          <button type="button" className="button" disabled={table.items.length === 0} onClick={() => void write()}>
            Write {what} as CSV
          </button>
        </div>
      </div>
    </details>
  )
}
