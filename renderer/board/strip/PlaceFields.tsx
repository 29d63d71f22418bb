import { editPlace, type YesNo } from '../../../shared-model/design'
import { ChoiceField } from '../../fields/ChoiceField'
import { MaybeLengthField } from '../../fields/MaybeLengthField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'

const YES_NO: readonly { readonly value: YesNo; readonly label: string }[] = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: 'unknown', label: 'Not known' }
]

/** Where the build stands; what is not known counts as the careful answer. */
export function PlaceFields() {
  const place = useApp((state) => state.design.place)
  const edit = useEdit()
  const set = (changes: Parameters<typeof editPlace>[1]): string | null =>
    edit.design('describe the place', (design) => editPlace(design, changes))
  return (
    <StripPart title="Place" path="place">
      <p className="quiet small">What is not known counts as the careful answer.</p>
      <div className="fields">
        <ChoiceField
          label="Where it stands"
          path="place.where"
          value={place.where}
          choices={[
            { value: 'inside', label: 'Inside' },
            { value: 'outside', label: 'Outside' },
            { value: 'unknown', label: 'Not known' }
          ]}
          commit={(where) => set({ where })}
        />
        <ChoiceField
          label="The window opens"
          path="place.windowOpens"
          value={place.windowOpens}
          choices={[
            { value: 'inward', label: 'Inward' },
            { value: 'outward', label: 'Outward' },
            { value: 'slides', label: 'It slides' },
            { value: 'fixed', label: 'It is fixed' },
            { value: 'unknown', label: 'Not known' }
          ]}
          commit={(windowOpens) => set({ windowOpens })}
        />
        <ChoiceField
          label="Over a public way"
          path="place.overPublicWay"
          value={place.overPublicWay}
          choices={YES_NO}
          commit={(overPublicWay) => set({ overPublicWay })}
        />
        <ChoiceField
          label="A way out in a fire"
          path="place.exitWindow"
          value={place.exitWindow}
          choices={YES_NO}
          commit={(exitWindow) => set({ exitWindow })}
        />
        <ChoiceField
          label="Children in reach"
          path="place.children"
          value={place.children}
          choices={YES_NO}
          commit={(children) => set({ children })}
        />
        <MaybeLengthField
          label="To the next outlet"
          path="place.outletDistanceMm"
          value={place.outletDistanceMm}
          commit={(outletDistanceMm) => set({ outletDistanceMm })}
        />
        <ChoiceField
          label="Liner"
          path="place.liner"
          value={place.liner}
          choices={[
            { value: 'none', label: 'None' },
            { value: 'food-contact', label: 'Fit for food' },
            { value: 'other', label: 'Another' },
            { value: 'unknown', label: 'Not known' }
          ]}
          commit={(liner) => set({ liner })}
        />
        <ChoiceField
          label="The stock is"
          path="place.stockOrigin"
          value={place.stockOrigin}
          choices={[
            { value: 'new', label: 'New' },
            { value: 'reclaimed', label: 'Reclaimed' },
            { value: 'unknown', label: 'Not known' }
          ]}
          commit={(stockOrigin) => set({ stockOrigin })}
        />
      </div>
    </StripPart>
  )
}
