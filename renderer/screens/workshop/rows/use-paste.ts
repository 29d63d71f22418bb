import { ok } from '../../../../shared-model/outcome'
import { useAppStore } from '../../../store/use-app'
import { useEdit } from '../../../store/use-edit'
import { readRows, type StartCell } from './read-rows'
import type { RowsFor, RowTable } from './row-table'

/** Cells pasted into a list of the workshop, as one step of the history; gives back why nothing was taken. */
export function usePaste<T extends { readonly id: string }>(
  what: string,
  table: RowTable<T>,
  rowsFor: RowsFor
): (text: string, from: StartCell) => readonly string[] {
  const store = useAppStore()
  const edit = useEdit()
  return (text, from) => {
    const read = readRows(text, table, store.getState().workshop, rowsFor, from)
    if (!read.ok) return read.problem
    const { workshop, added, changed } = read.value
    edit.workshop(`paste rows into ${what}`, () => ok(workshop))
    store.do.look({ notice: { text: `Pasted: ${changed} changed, ${added} added. One step back undoes it.` } })
    return []
  }
}
