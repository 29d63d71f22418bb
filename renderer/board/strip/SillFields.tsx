import { editSill, setDesignField } from '../../../shared-model/design'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { MaybeKilogramsField } from './MaybeKilogramsField'
import { MeasuredSizes } from './MeasuredSizes'
import { Obstacles } from './Obstacles'
import { StripPart } from './StripPart'

/** The sill as measured: several readings of each size, the least rules. */
export function SillFields({ open }: { readonly open: boolean }) {
  const sill = useApp((state) => state.design.sill)
  const quantity = useApp((state) => state.design.quantity)
  const growthShare = useApp((state) => state.design.growthShare)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editSill>[1]): string | null =>
    edit.design('measure the sill', (design) => editSill(design, changes))
  return (
    <StripPart title="Sill" path="sill" open={open}>
      <MeasuredSizes
        label="Length along the sill"
        path="sill.lengthsMm"
        sizesMm={sill.lengthsMm}
        commit={(lengthsMm) => set({ lengthsMm })}
      />
      <MeasuredSizes
        label="Depth, front to glass"
        path="sill.depthsMm"
        sizesMm={sill.depthsMm}
        commit={(depthsMm) => set({ depthsMm })}
      />
      <div className="fields">
        <LengthField
          label="Clear height"
          path="sill.clearHeightMm"
          value={sill.clearHeightMm}
          commit={(clearHeightMm) => set({ clearHeightMm })}
        />
        <LengthField
          label="Fit clearance"
          path="sill.clearanceMm"
          value={sill.clearanceMm}
          commit={(clearanceMm) => set({ clearanceMm })}
        />
        <NumberField
          label="Fall along"
          unit="mm per m"
          path="sill.fallAlongMmPerM"
          value={sill.fallAlongMmPerM}
          hint="Rise to the right"
          commit={(fallAlongMmPerM) => set({ fallAlongMmPerM })}
        />
        <NumberField
          label="Fall to the glass"
          unit="mm per m"
          path="sill.fallAcrossMmPerM"
          value={sill.fallAcrossMmPerM}
          hint="Rise to the glass"
          commit={(fallAcrossMmPerM) => set({ fallAcrossMmPerM })}
        />
        <MaybeKilogramsField
          label="Load limit"
          path="sill.loadLimitKg"
          value={sill.loadLimitKg}
          hint="Your own figure; none is published"
          commit={(loadLimitKg) => set({ loadLimitKg })}
        />
        <NumberField
          label="How many to make"
          whole
          path="quantity"
          value={quantity}
          commit={(value) => edit.design('change how many', (design) => setDesignField(design, 'quantity', value))}
        />
        <NumberField
          label="Growth drawn"
          unit="%"
          least={0}
          most={100}
          path="growthShare"
          value={growthShare * 100}
          commit={(value) =>
            edit.design('change the growth', (design) => setDesignField(design, 'growthShare', value / 100))
          }
        />
      </div>
      <Obstacles />
    </StripPart>
  )
}
