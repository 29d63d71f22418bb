import { useServices } from '../../documents/use-documents'
import { Icon } from '../../icons/Icon'
import { isWorkshopUnsaved } from '../../store/files'
import { useApp } from '../../store/use-app'
import { Page } from '../Page'
import { CuttingFields } from './CuttingFields'
import { OffersTable } from './OffersTable'
import { PartsFields } from './parts/PartsFields'
import { RackTable } from './RackTable'
import { SawsList } from './SawsList'
import { SheetsTable } from './SheetsTable'
import { ShelfTable } from './ShelfTable'
import { ShowsFields } from './ShowsFields'
import { StockTable } from './StockTable'
import { TimesFields } from './TimesFields'

/** Where and how things are made: units, tools, stock and prices, the rack, times. */
export default function WorkshopScreen() {
  const { documents } = useServices()
  const unsaved = useApp(isWorkshopUnsaved)
  const file = useApp((state) => state.files.workshopFile)
  return (
    <Page
      title="Workshop"
      says="Your tools, your stock and its prices, the rack, your times. Everything is worked out with these."
      action={
        <div className="button-row">
          <span className="quiet small">
            {file === null
              ? 'Kept on this machine'
              : unsaved
                ? `Changes not saved in ${file.name}`
                : `Saved in ${file.name}`}
          </span>
          <button type="button" className="button" onClick={() => void documents.openWorkshop()}>
            <Icon name="open" />
            Open a workshop…
          </button>
          <button type="button" className="button primary" onClick={() => void documents.saveWorkshop()}>
            <Icon name="save" />
            Save the workshop
          </button>
        </div>
      }
    >
      <div className="parts-two">
        <ShowsFields />
        <CuttingFields />
      </div>
      <PartsFields />
      <StockTable />
      <SheetsTable />
      <OffersTable />
      <RackTable />
      <ShelfTable />
      <div className="parts-two">
        <SawsList />
        <TimesFields />
      </div>
    </Page>
  )
}
