import { setDesignField } from '../../../shared-model/design'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

/** How many are made at once. */
export function BatchField() {
  const quantity = useApp((state) => state.design.quantity)
  const edit = useEdit()
  return (
    <section className="part" aria-label="Batch">
      <div className="fields">
        <NumberField
          label="How many to make at once"
          whole
          live
          least={1}
          value={quantity}
          path="quantity"
          commit={(value) => edit.design('change how many', (design) => setDesignField(design, 'quantity', value))}
        />
      </div>
    </section>
  )
}
