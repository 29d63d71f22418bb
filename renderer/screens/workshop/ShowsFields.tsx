import { editShows, setWorkshopField } from '../../../shared-model/design'
import { CURRENCY_CODES } from '../../../shared-model/units'
import { ChoiceField } from '../../fields/ChoiceField'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

const CURRENCIES = CURRENCY_CODES.map((code) => ({ value: code, label: code }))

/** Units, graduation, decimal mark, paper, currency. */
export function ShowsFields() {
  const { shows, currency, title } = useApp((state) => state.workshop)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editShows>[1]): string | null =>
    edit.workshop('change the units', (workshop) => editShows(workshop, changes))
  return (
    <section className="part" aria-label="Units">
      <h2>Units and money</h2>
      <div className="fields">
        <TextField
          label="Name of the workshop"
          value={title}
          commit={(value) =>
            edit.workshop('name the workshop', (workshop) => setWorkshopField(workshop, 'title', value))
          }
        />
        <ChoiceField
          label="Lengths in"
          value={shows.units}
          choices={[
            { value: 'mm', label: 'Millimetres' },
            { value: 'in', label: 'Inches' }
          ]}
          commit={(units) => set({ units })}
        />
        {shows.units === 'in' ? (
          <ChoiceField
            label="Your rule reads"
            value={`${shows.inchGraduation}`}
            choices={[
              { value: '16', label: '1/16 in' },
              { value: '32', label: '1/32 in' }
            ]}
            commit={(text) => set({ inchGraduation: text === '32' ? 32 : 16 })}
          />
        ) : (
          <ChoiceField
            label="Your rule reads"
            value={`${shows.mmGraduation}`}
            choices={[
              { value: '1', label: '1 mm' },
              { value: '0.5', label: '0.5 mm' }
            ]}
            commit={(text) => set({ mmGraduation: text === '0.5' ? 0.5 : 1 })}
          />
        )}
        <ChoiceField
          label="Decimal mark"
          value={shows.decimalMark}
          choices={[
            { value: '.', label: 'Point' },
            { value: ',', label: 'Comma' }
          ]}
          commit={(decimalMark) => set({ decimalMark })}
        />
        <ChoiceField
          label="Paper"
          value={shows.paper}
          choices={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' }
          ]}
          commit={(paper) => set({ paper })}
        />
        <ChoiceField
          label="Currency"
          value={currency}
          choices={CURRENCIES}
          commit={(code) =>
            edit.workshop('change the currency', (workshop) => setWorkshopField(workshop, 'currency', code))
          }
        />
      </div>
    </section>
  )
}
