import { useState } from 'react'
import { editShows } from '../../../shared-model/design'
import { svgTemplate } from '../../../shared-model/paper'
import { buildSheet } from '../../../shared-model/sheet'
import { fileName, hostText } from '../../documents/open-documents'
import { useServices } from '../../documents/use-documents'
import { CheckField } from '../../fields/CheckField'
import { ChoiceField } from '../../fields/ChoiceField'
import { TextField } from '../../fields/TextField'
import type { HostResult } from '../../host/host'
import { Icon } from '../../icons/Icon'
import { useHasChannels } from '../../paper-view/use-sheet'
import { usePlanState } from '../../plan/use-plan'
import { useActions, useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { Empty } from '../Empty'
import { Page } from '../Page'
import { Working } from '../Working'
import { PagesView } from './PagesView'
import { PartsChoice } from './PartsChoice'
import { SheetProgress } from './SheetProgress'
import { TitleBlockFields } from './TitleBlockFields'
import { useWrittenSheet } from './use-written-sheet'

/** The document for the bench: its pages as they will be printed, what goes on them, writing and printing. */
export default function SheetScreen() {
  const has = useHasChannels()
  const { host } = useServices()
  const { look } = useActions()
  const edit = useEdit()
  const { paper } = useApp((state) => state.workshop.shows)
  const parts = useApp((state) => state.view.sheetParts)
  const title = useApp((state) => state.design.title)
  const of = usePlanState((state) => state.fullOf)
  const [cost, setCost] = useState(true)
  const [batchNumber, setBatch] = useState('')
  const [doneToo, setDoneToo] = useState(false)
  const isBegun = usePlanState((state) => state.full?.rest != null)
  const sheet = useWrittenSheet({ paper, cost, parts, batchNumber, doneToo })
  const base = fileName(title, 'design').replace('.design.json', '')
  const tell = (result: HostResult<string>): void => {
    if (result.ok) look({ notice: { text: `Written: ${result.value}` } })
    else if (result.problem.code !== 'given-up') look({ notice: { text: hostText(result.problem) } })
  }
  const { written } = sheet
  const write = async (): Promise<void> => {
    if (written !== null) tell(await host.writeOut(`${base}-build-sheet.pdf`, 'application/pdf', written.pdf.slice()))
  }
  const print = async (): Promise<void> => {
    if (written === null) return
    const result = await host.printPdf(base, written.pdf.slice())
    if (!result.ok) tell(result)
  }
  const writeTables = async (): Promise<void> => {
    for (const table of written?.tables ?? []) {
      tell(await host.writeOut(`${base}-${table.name}.csv`, 'text/csv', new TextEncoder().encode(table.text)))
    }
  }
  const writeTemplates = async (): Promise<void> => {
    if (of === null) return
    const data = buildSheet(of.plan, of.design, of.workshop, { parts: ['templates'], doneToo })
    for (const template of data.templates) {
      const text = svgTemplate(template, data.shows)
      const name = `${base}-template-${template.mark}-${template.face}.svg`
      tell(await host.writeOut(name, 'image/svg+xml', new TextEncoder().encode(text)))
    }
  }
  return (
    <Page
      title="Build sheet"
      says="These are the pages that will be written. Print at 100 % and measure the check bars on the templates."
      action={
        has ? (
          <div className="button-row">
            <button type="button" className="button primary" disabled={written === null} onClick={() => void write()}>
              <Icon name="save" />
              Write the PDF
            </button>
            <button type="button" className="button" disabled={written === null} onClick={() => void print()}>
              <Icon name="print" />
              Print
            </button>
            <button type="button" className="button" disabled={written === null} onClick={() => void writeTables()}>
              Tables as CSV
            </button>
            <button type="button" className="button" disabled={of === null} onClick={() => void writeTemplates()}>
              Templates as SVG
            </button>
          </div>
        ) : null
      }
    >
      <Working />
      {has ? (
        <div className="sheet-room">
          <section className="part" aria-label="What goes on the sheet">
            <h2>What goes on it</h2>
            <ChoiceField
              label="Paper"
              value={paper}
              choices={[
                { value: 'a4', label: 'A4' },
                { value: 'letter', label: 'Letter' }
              ]}
              commit={(chosen) =>
                edit.workshop('change the paper', (workshop) => editShows(workshop, { paper: chosen }))
              }
            />
            <CheckField label="With prices and cost" value={cost} commit={setCost} />
            {isBegun ? (
              <CheckField label="What is done already too, not only the rest" value={doneToo} commit={setDoneToo} />
            ) : null}
            <TextField
              label="Batch number"
              value={batchNumber}
              commit={(text) => {
                setBatch(text)
                return null
              }}
            />
            <TitleBlockFields />
            <PartsChoice />
          </section>
          <div className="sheet-pages">
            <SheetProgress state={sheet} />
            {written === null ? null : <PagesView pdf={written.pdf} />}
          </div>
        </div>
      ) : (
        <Empty says="There is nothing to print yet. Put a channel on the sill first." />
      )}
    </Page>
  )
}
