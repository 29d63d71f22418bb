import { editChannels, matchSites, staggerSites } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { ok } from '../../../shared-model/outcome'
import { NumberField } from '../../fields/NumberField'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'

/** Fields that several chosen channels share; a change goes to all of them. */
export function ChannelsFields({ channels }: { readonly channels: readonly Channel[] }) {
  const edit = useEdit()
  const ids = channels.map((each) => each.id)
  const [first, ...others] = channels
  if (first === undefined) return null
  const each = (change: typeof matchSites) => (): string | null =>
    edit.design('place sites alike', (design) =>
      others.reduce<ReturnType<typeof matchSites>>(
        (made, other) => (made.ok ? change(made.value, other.id, first.id) : made),
        ok(design)
      )
    )
  return (
    <StripPart title={`${channels.length} channels`} open>
      <NumberField
        label="Fill share of all"
        unit="%"
        least={0}
        most={100}
        value={first.fillShare * 100}
        commit={(percent) =>
          edit.design('change the fill', (design) => editChannels(design, ids, { fillShare: percent / 100 }))
        }
      />
      <div className="button-row">
        <button type="button" className="button" onClick={each(matchSites)}>
          Sites as in the first
        </button>
        <button type="button" className="button" onClick={each(staggerSites)}>
          Stagger against the first
        </button>
      </div>
    </StripPart>
  )
}
