import { editWater } from '../../../shared-model/design'
import { DEFAULT_MEDIUM_G_PER_L, type Stage } from '../../../shared-model/reservoir'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'
import { FeedFields } from './WaterFieldsFeed'

export const STAGE_NAMES: readonly { readonly value: Stage; readonly label: string }[] = [
  { value: 'unrooted', label: 'Unrooted' },
  { value: 'rooting', label: 'Rooting' },
  { value: 'rooted', label: 'Rooted' },
  { value: 'full', label: 'Full' }
]

/** How far the plants are, and the air gap wanted then. */
export function WaterFields() {
  const water = useApp((state) => state.design.water)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editWater>[1]): string | null =>
    edit.design('change the water', (design) => editWater(design, changes))
  return (
    <>
      <StripPart title="Water" path="water">
        <div className="fields">
          <ChoiceField
            label="Plants are"
            path="water.stage"
            value={water.stage}
            choices={STAGE_NAMES}
            commit={(stage) => set({ stage })}
          />
          <NumberField
            label="Solution"
            unit="°C"
            path="water.celsius"
            value={water.celsius}
            commit={(celsius) => set({ celsius })}
          />
          <NumberField
            label="Left at the end level"
            unit="%"
            path="water.endShare"
            value={water.endShare * 100}
            least={0}
            most={100}
            commit={(percent) => set({ endShare: percent / 100 })}
          />
          <NumberField
            label="Wet medium in a cup"
            unit="g/L"
            path="water.mediumGPerL"
            value={water.mediumGPerL ?? DEFAULT_MEDIUM_G_PER_L}
            least={0}
            most={2000}
            commit={(mediumGPerL) => set({ mediumGPerL })}
          />
        </div>
        <fieldset className="fields" aria-label="Air gap wanted">
          {STAGE_NAMES.map(({ value: stage, label }) => (
            <LengthField
              key={stage}
              label={`Air gap, ${label.toLowerCase()}`}
              path={`water.stageGapsMm.${stage}`}
              negative
              value={water.stageGapsMm[stage]}
              commit={(gapMm) => set({ stageGapsMm: { ...water.stageGapsMm, [stage]: gapMm } })}
            />
          ))}
        </fieldset>
        <p className="quiet small">A negative air gap: the cup stands that deep in the solution.</p>
      </StripPart>
      <FeedFields />
    </>
  )
}
