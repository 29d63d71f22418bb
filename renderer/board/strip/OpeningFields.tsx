import { deleteOpening, editOpening } from '../../../shared-model/design'
import type { Channel, OpeningKind, ServiceOpening } from '../../../shared-model/layout'
import { OPENING_NAMES } from '../../../shared-model/words'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'

const KINDS: readonly { readonly value: OpeningKind; readonly label: string }[] = [
  { value: 'fill-port', label: OPENING_NAMES['fill-port'] },
  { value: 'overflow', label: OPENING_NAMES.overflow },
  { value: 'drain', label: OPENING_NAMES.drain },
  { value: 'level-sight', label: OPENING_NAMES['level-sight'] },
  { value: 'vent', label: OPENING_NAMES.vent },
  { value: 'plug', label: OPENING_NAMES.plug }
]
const FACES: readonly { readonly value: ServiceOpening['face']; readonly label: string }[] = [
  { value: 'top', label: 'Upper face' },
  { value: 'front', label: 'Front' },
  { value: 'back', label: 'Back' },
  { value: 'bottom', label: 'Underside' },
  { value: 'datum-end', label: 'Datum end' },
  { value: 'far-end', label: 'Far end' }
]
const CLOSURES: readonly { readonly value: ServiceOpening['closure']; readonly label: string }[] = [
  { value: 'plug', label: 'Plug' },
  { value: 'grommet', label: 'Grommet' },
  { value: 'bulkhead', label: 'Bulkhead fitting' },
  { value: 'cap', label: 'Cap' },
  { value: 'screen', label: 'Screen' },
  { value: 'clear-strip', label: 'Clear strip' },
  { value: 'float-stick', label: 'Float stick' },
  { value: 'none', label: 'None' }
]

/** One service opening: what it is for, where it is, how it is closed. */
export function OpeningFields({ channel, opening }: { readonly channel: Channel; readonly opening: ServiceOpening }) {
  const edit = useEdit()
  const set = (changes: Parameters<typeof editOpening>[3]): string | null =>
    edit.design('change a service opening', (design) => editOpening(design, channel.id, opening.id, changes))
  const path = `channels.${channel.id}.openings.${opening.id}`
  const onEnd = opening.face === 'datum-end' || opening.face === 'far-end'
  return (
    <StripPart title={OPENING_NAMES[opening.kind]} open>
      <div className="fields">
        <ChoiceField label="For" value={opening.kind} choices={KINDS} commit={(kind) => set({ kind })} />
        <ChoiceField label="In the" value={opening.face} choices={FACES} commit={(face) => set({ face })} />
        {onEnd ? null : (
          <LengthField
            label="From the datum end"
            path={`${path}.atMm`}
            value={opening.atMm}
            commit={(atMm) => set({ atMm })}
          />
        )}
        {opening.face === 'top' || opening.face === 'bottom' ? null : (
          <LengthField
            label="Centre above the floor"
            path={`${path}.heightMm`}
            value={opening.heightMm}
            commit={(heightMm) => set({ heightMm })}
          />
        )}
        <LengthField
          label="Diameter"
          path={`${path}.diameterMm`}
          value={opening.diameterMm}
          commit={(diameterMm) => set({ diameterMm })}
        />
        <ChoiceField
          label="Closed with"
          value={opening.closure}
          choices={CLOSURES}
          commit={(closure) => set({ closure })}
        />
      </div>
      <button
        type="button"
        className="button"
        onClick={() =>
          edit.design('take a service opening away', (design) => deleteOpening(design, channel.id, opening.id))
        }
      >
        Take away
      </button>
    </StripPart>
  )
}
