import { csvTables } from '../../../shared-model/paper'
import { buildSheet } from '../../../shared-model/sheet'
import { hostText } from '../../documents/open-documents'
import { useServices } from '../../documents/use-documents'
import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { useAppStore } from '../../store/use-app'

/** The shopping list as comma-separated text, with its prices; the same table that the build sheet prints. */
export function WriteShopping() {
  const of = usePlanState((state) => state.fullOf)
  const stale = usePlanState((state) => state.stale)
  const { host } = useServices()
  const store = useAppStore()
  const write = async (): Promise<void> => {
    if (of === null) return
    const sheet = buildSheet(of.plan, of.design, of.workshop, { parts: ['materials'], cost: true })
    const table = csvTables(sheet).find(({ name }) => name === 'shopping')
    if (table === undefined) return
    const written = await host.writeOut('shopping.csv', 'text/csv', new TextEncoder().encode(table.text))
    if (written.ok) store.do.look({ notice: { text: `Written: ${written.value}` } })
    else if (written.problem.code !== 'given-up') store.do.look({ notice: { text: hostText(written.problem) } })
  }
  return (
    <button type="button" className="button" disabled={of === null || stale} onClick={() => void write()}>
      <Icon name="save" />
      Write the shopping list as CSV
    </button>
  )
}
