import { deleteWay, editWay } from '../../../shared-model/design'
import { CheckField } from '../../fields/CheckField'
import { MoneyField } from '../../fields/MoneyField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

/** The ways of selling: fees, postage, given prices. */
export function WaysFields() {
  const ways = useApp((state) => state.workshop.pricing.ways)
  const edit = useEdit()
  if (ways.length === 0) return null
  return (
    <section className="part" aria-label="Ways of selling">
      <h2>Ways of selling</h2>
      {ways.map((way) => {
        const set = (changes: Parameters<typeof editWay>[2]): string | null =>
          edit.workshop('change a way of selling', (workshop) => editWay(workshop, way.id, changes))
        const path = `pricing.ways.${way.id}`
        const money = (key: 'fixedFeeMinor' | 'postageChargedMinor' | 'postageCostMinor' | 'fixedPerBatchMinor') => ({
          path: `${path}.${key}`,
          value: way[key],
          commit: (value: number | null) => set({ [key]: value ?? 0 })
        })
        return (
          <fieldset key={way.id} className="way" aria-label={way.name}>
            <div className="part-head">
              <h3>{way.name}</h3>
              <button
                type="button"
                className="button plain small"
                aria-label={`Take away ${way.name}`}
                onClick={() => edit.workshop('take a way of selling away', (workshop) => deleteWay(workshop, way.id))}
              >
                Take away
              </button>
            </div>
            <div className="fields">
              <TextField label="Name" path={`${path}.name`} value={way.name} commit={(name) => set({ name })} />
              <MoneyField
                label="Given price before tax"
                path={`${path}.givenPriceMinor`}
                value={way.givenPriceMinor}
                hint="Empty: from the margin"
                commit={(givenPriceMinor) => set({ givenPriceMinor })}
              />
              <NumberField
                label="Fee"
                unit="%"
                live
                path={`${path}.feePercent`}
                value={way.feePercent}
                commit={(feePercent) => set({ feePercent })}
              />
              <MoneyField label="Fixed fee" {...money('fixedFeeMinor')} />
              <MoneyField label="Postage charged" {...money('postageChargedMinor')} />
              <MoneyField label="Postage paid" {...money('postageCostMinor')} />
              <NumberField
                label="Time to post one"
                unit="min"
                live
                path={`${path}.postPerUnitS`}
                value={(way.postPerUnitS ?? 0) / 60}
                commit={(minutes) => set({ postPerUnitS: Math.round(minutes * 60) })}
              />
              <MoneyField label="Fee for the batch" {...money('fixedPerBatchMinor')} />
              <div>
                <CheckField label="Fee on tax too" value={way.feeOnTax} commit={(feeOnTax) => set({ feeOnTax })} />
                <CheckField
                  label="Fee on postage too"
                  value={way.feeOnPostage}
                  commit={(feeOnPostage) => set({ feeOnPostage })}
                />
              </div>
            </div>
          </fieldset>
        )
      })}
    </section>
  )
}
