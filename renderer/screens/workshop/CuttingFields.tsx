import type { CutToolKind } from '../../../shared-model/cutting'
import { editCutting, editSheetSetup } from '../../../shared-model/design'
import { CUT_TOOL_NAMES } from '../../../shared-model/words'
import { CheckField } from '../../fields/CheckField'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

const KINDS: readonly CutToolKind[] = ['hand_saw', 'power_mitre', 'circular', 'jigsaw', 'snips', 'knife', 'pipe_cutter']

/** How bars and sheets are cut in this shop. */
export function CuttingFields() {
  const cutting = useApp((state) => state.workshop.cutting)
  const sheets = useApp((state) => state.workshop.sheetSetup)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editCutting>[1]): string | null =>
    edit.workshop('change how bars are cut', (workshop) => editCutting(workshop, changes))
  const setSheet = (key: 'webMm' | 'edgeMm' | 'keptWorthPercent') => (value: number) =>
    edit.workshop('change how sheets are cut', (workshop) => editSheetSetup(workshop, { [key]: value }))
  return (
    <section className="part" aria-label="Cutting">
      <h2>Cutting</h2>
      <div className="fields">
        <ChoiceField
          label="Cut with"
          value={cutting.tool}
          choices={KINDS.map((kind) => ({ value: kind, label: CUT_TOOL_NAMES[kind] }))}
          commit={(tool) => set({ tool })}
        />
        <TextField label="Its name" value={cutting.toolName} commit={(toolName) => set({ toolName })} />
        <LengthField
          fine
          label="Kerf"
          path="cutting.kerfMm"
          value={cutting.kerfMm}
          commit={(kerfMm) => set({ kerfMm })}
        />
        <LengthField
          fine
          label="End trim of a new bar"
          path="cutting.endTrimMm"
          value={cutting.endTrimMm}
          commit={(endTrimMm) => set({ endTrimMm })}
        />
        <LengthField
          label="Keep offcuts from"
          path="cutting.keepFromMm"
          value={cutting.keepFromMm}
          commit={(keepFromMm) => set({ keepFromMm })}
        />
        <NumberField
          label="A kept offcut is worth"
          unit="% of new"
          path="cutting.keptWorthPercent"
          value={cutting.keptWorthPercent}
          commit={(keptWorthPercent) => set({ keptWorthPercent })}
        />
        <LengthField
          fine
          label="Web on a sheet"
          path="sheetSetup.webMm"
          value={sheets.webMm}
          commit={setSheet('webMm')}
        />
        <LengthField
          fine
          label="Edge on a sheet"
          path="sheetSetup.edgeMm"
          value={sheets.edgeMm}
          commit={setSheet('edgeMm')}
        />
        <NumberField
          label="Worth of a kept piece of sheet"
          unit="%"
          path="sheetSetup.keptWorthPercent"
          value={sheets.keptWorthPercent ?? 0}
          hint="Of its share of the sheet’s price, by area"
          commit={setSheet('keptWorthPercent')}
        />
      </div>
      <CheckField
        label="Pieces may be joined with a coupling"
        value={cutting.joinsAllowed}
        commit={(joinsAllowed) => set({ joinsAllowed })}
      />
    </section>
  )
}
