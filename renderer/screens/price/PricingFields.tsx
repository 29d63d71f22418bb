import { editPricing } from '../../../shared-model/design'
import { USUAL_DAY_H } from '../../../shared-model/pricing'
import { CheckField } from '../../fields/CheckField'
import { ChoiceField } from '../../fields/ChoiceField'
import { MoneyField } from '../../fields/MoneyField'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

/** Rates of the shop that go into every price. */
export function PricingFields() {
  const pricing = useApp((state) => state.workshop.pricing)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editPricing>[1]): string | null =>
    edit.workshop('change the rates', (workshop) => editPricing(workshop, changes))
  const percent = (key: 'marginPercent' | 'taxPercent' | 'scrapPercent') => ({
    unit: '%',
    live: true,
    path: `pricing.${key}`,
    value: pricing[key],
    commit: (value: number) => set({ [key]: value })
  })
  const money = (key: 'hourlyRateMinor' | 'overheadPerHourMinor') => ({
    path: `pricing.${key}`,
    value: pricing[key],
    commit: (value: number | null) => set({ [key]: value ?? 0 })
  })
  const ending = pricing.priceEnding
  return (
    <section className="part" aria-label="Rates">
      <h2>Rates</h2>
      <div className="fields">
        <MoneyField label="Your hour" {...money('hourlyRateMinor')} />
        <MoneyField label="Overhead per hour" {...money('overheadPerHourMinor')} />
        <NumberField label="Margin wanted" {...percent('marginPercent')} />
        <NumberField label="Scrap" {...percent('scrapPercent')} />
        <NumberField label="Tax" {...percent('taxPercent')} />
        <ChoiceField
          label="Tax is"
          path="pricing.taxKind"
          value={pricing.taxKind}
          choices={[
            { value: 'none', label: 'Not charged' },
            { value: 'sales-tax-on-top', label: 'Sales tax on top' },
            { value: 'value-added-inside', label: 'Value-added tax inside' }
          ]}
          commit={(taxKind) => set({ taxKind })}
        />
        <MoneyField
          label="Prices go up in steps of"
          path="pricing.priceEnding.everyMinor"
          value={ending.everyMinor}
          commit={(value) => set({ priceEnding: { ...ending, everyMinor: value ?? 1 } })}
        />
        <MoneyField
          label="and end with"
          path="pricing.priceEnding.endsWithMinor"
          value={ending.endsWithMinor}
          commit={(value) => set({ priceEnding: { ...ending, endsWithMinor: value ?? 0 } })}
        />
        <ChoiceField
          label="Rest of a pack"
          value={pricing.chargePackRestTo}
          choices={[
            { value: 'nobody', label: 'Stays on the shelf' },
            { value: 'batch', label: 'Charged to the batch' }
          ]}
          commit={(chargePackRestTo) => set({ chargePackRestTo })}
        />
        <ChoiceField
          label="Learning"
          value={pricing.learning.model}
          choices={[
            { value: 'none', label: 'Not counted' },
            { value: 'cumulative-average', label: 'Cumulative average' },
            { value: 'unit', label: 'Unit' }
          ]}
          commit={(model) => set({ learning: { ...pricing.learning, model } })}
        />
        {pricing.learning.model === 'none' ? null : (
          <NumberField
            label="Learning rate"
            unit="%"
            live
            path="pricing.learning.ratePercent"
            value={pricing.learning.ratePercent}
            commit={(ratePercent) => set({ learning: { ...pricing.learning, ratePercent } })}
          />
        )}
        <NumberField
          label="Tax on what you buy"
          unit="%"
          live
          path="pricing.buyingTax.percent"
          value={pricing.buyingTax?.percent ?? 0}
          hint="Nought: prices count as they stand"
          commit={(percent) => set({ buyingTax: { reclaimed: false, ...pricing.buyingTax, percent } })}
        />
        <NumberField
          label="Hours worked in a day"
          unit="h"
          path="pricing.workHoursADay"
          value={pricing.workHoursADay ?? USUAL_DAY_H}
          hint="For the day a quote promises"
          commit={(workHoursADay) => set({ workHoursADay })}
        />
        <NumberField
          label="Prices are old after"
          unit="days"
          whole
          path="pricing.priceAgeDays"
          value={pricing.priceAgeDays}
          commit={(priceAgeDays) => set({ priceAgeDays })}
        />
      </div>
      {pricing.buyingTax === undefined || pricing.buyingTax.percent === 0 ? null : (
        <CheckField
          label="You get the tax on what you buy back, so it is no cost"
          value={pricing.buyingTax.reclaimed}
          commit={(reclaimed) => set({ buyingTax: { percent: pricing.buyingTax?.percent ?? 0, reclaimed } })}
        />
      )}
    </section>
  )
}
