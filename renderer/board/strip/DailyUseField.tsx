import type { Crop } from '../../../shared-model/crops'
import { measureDailyUse } from '../../../shared-model/design'
import { MaybeNumberField } from '../../fields/MaybeNumberField'
import { useEdit } from '../../store/use-edit'

/** What one plant of a crop drinks in a day: published, or measured by the grower; empty where nobody knows. */
export function DailyUseField({ crop }: { readonly crop: Crop }) {
  const edit = useEdit()
  const { dailyUseMl } = crop
  const shown = dailyUseMl === null ? null : (dailyUseMl.least + dailyUseMl.most) / 2
  return (
    <MaybeNumberField
      label={`Daily use, ${crop.name}`}
      unit="mL"
      path={`crops.${crop.id}.dailyUseMl`}
      value={shown}
      commit={(ml) => edit.design('measure the daily use', (design) => measureDailyUse(design, crop.id, ml))}
    />
  )
}
