import { editWater } from '../../../shared-model/design'
import type { Feed } from '../../../shared-model/reservoir'
import { ChoiceField } from '../../fields/ChoiceField'
import { MaybeNumberField } from '../../fields/MaybeNumberField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'
import { FirstFillFigures } from './WaterFieldsFill'
import { SaltsFields } from './WaterFieldsSalts'

type Concentrate = Extract<Feed, { readonly kind: 'concentrate' }>

/** What each kind starts from; typed over with what the label says. */
const FIRST: Readonly<Record<Feed['kind'], Feed>> = {
  none: { kind: 'none' },
  concentrate: { kind: 'concentrate', name: 'Concentrate', doseMlPerL: 4, doseEcMsPerCm: 1.6, targetEcMsPerCm: 1.6 },
  salts: { kind: 'salts', salts: [] }
}

/** The source water and what is mixed into the first fill, with the strength the crops want beside it. */
export function FeedFields() {
  const { feed, sourceEcMsPerCm } = useApp((state) => state.design.water)
  const edit = useEdit()
  const setWater = (changes: Parameters<typeof editWater>[1]): string | null =>
    edit.design('change the feed', (design) => editWater(design, changes))
  const set = (made: Feed): string | null => setWater({ feed: made })
  return (
    <StripPart title="Feed and first fill" path="water.feed">
      <div className="fields">
        <ChoiceField
          label="Feed"
          path="water.feed.kind"
          value={feed.kind}
          choices={[
            { value: 'none', label: 'None, water only' },
            { value: 'concentrate', label: 'A concentrate' },
            { value: 'salts', label: 'Dry salts' }
          ]}
          commit={(kind) => (kind === feed.kind ? null : set(FIRST[kind]))}
        />
        <MaybeNumberField
          label="EC of your water"
          unit="mS/cm"
          path="water.sourceEcMsPerCm"
          value={sourceEcMsPerCm}
          hint="Empty: not measured"
          commit={(value) => setWater({ sourceEcMsPerCm: value })}
        />
      </div>
      {feed.kind === 'concentrate' ? <ConcentrateFields feed={feed} set={set} /> : null}
      {feed.kind === 'salts' ? <SaltsFields salts={feed.salts} set={(salts) => set({ kind: 'salts', salts })} /> : null}
      <FirstFillFigures />
    </StripPart>
  )
}

interface ConcentrateFieldsProps {
  readonly feed: Concentrate
  readonly set: (feed: Feed) => string | null
}

function ConcentrateFields({ feed, set }: ConcentrateFieldsProps) {
  return (
    <fieldset className="fields" aria-label="The concentrate, as its label says">
      <TextField
        label="Name of the feed"
        path="water.feed.name"
        value={feed.name}
        commit={(name) => set({ ...feed, name })}
      />
      <NumberField
        label="Label's dose"
        unit="mL/L"
        path="water.feed.doseMlPerL"
        value={feed.doseMlPerL}
        commit={(doseMlPerL) => set({ ...feed, doseMlPerL })}
      />
      <NumberField
        label="EC at that dose"
        unit="mS/cm"
        path="water.feed.doseEcMsPerCm"
        value={feed.doseEcMsPerCm}
        commit={(doseEcMsPerCm) => set({ ...feed, doseEcMsPerCm })}
      />
      <NumberField
        label="EC wanted"
        unit="mS/cm"
        path="water.feed.targetEcMsPerCm"
        value={feed.targetEcMsPerCm}
        commit={(targetEcMsPerCm) => set({ ...feed, targetEcMsPerCm })}
      />
    </fieldset>
  )
}
