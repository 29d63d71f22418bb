import { addSupport, deleteSupport, editSupport } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { LengthField } from '../../fields/LengthField'
import { usePlanState } from '../../plan/use-plan'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { StripPart } from './StripPart'

/** Feet or blocks under a channel; with none the sill carries it along its length. */
export function SupportsFields({ channel }: { readonly channel: Channel }) {
  const edit = useEdit()
  const say = useSay()
  const part = usePlanState(({ live }) => live.channels.find((each) => each.channelId === channel.id))
  const load = part?.load
  const shims = part?.water.shims ?? []
  const path = `channels.${channel.id}.supports`
  return (
    <StripPart title={`Supports (${channel.supports.length})`} path={path}>
      {channel.supports.length === 0 ? (
        <p className="quiet small">The sill carries the channel along its length.</p>
      ) : null}
      {load?.sag ? (
        <p className="small">
          Supports at most {say.length(load.sag.spacingNeededMm)} apart keep the sag within its limit.
        </p>
      ) : null}
      {shims.length === 0 ? null : (
        <dl className="fill-figures" aria-label="Shims that bring it level">
          {shims.map(({ atMm, shimMm, lowSide, lowSideMm }) => (
            <div key={atMm}>
              <dt>Shim at {say.length(atMm)}</dt>
              <dd className="figure">
                {lowSide === null ? say.fine(shimMm) : `${say.fine(shimMm)}, ${say.fine(lowSideMm)} at its ${lowSide}`}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {channel.supports.map((support, serial) => {
        const set = (changes: Parameters<typeof editSupport>[3]): string | null =>
          edit.design('change a support', (design) => editSupport(design, channel.id, support.id, changes))
        return (
          <fieldset key={support.id} className="fields" aria-label={`Support ${serial + 1}`}>
            <LengthField
              label={`Support ${serial + 1} from the datum end`}
              path={`${path}.${support.id}.atMm`}
              value={support.atMm}
              commit={(atMm) => set({ atMm })}
            />
            <LengthField label="Along" value={support.alongMm} commit={(alongMm) => set({ alongMm })} />
            <LengthField label="Across" value={support.acrossMm} commit={(acrossMm) => set({ acrossMm })} />
            <LengthField label="Height" value={support.heightMm} commit={(heightMm) => set({ heightMm })} />
            <button
              type="button"
              className="button"
              onClick={() =>
                edit.design('take a support away', (design) => deleteSupport(design, channel.id, support.id))
              }
            >
              Take support {serial + 1} away
            </button>
          </fieldset>
        )
      })}
      <button
        type="button"
        className="button plain small"
        onClick={() =>
          edit.design('add a support', (design) =>
            addSupport(design, channel.id, {
              atMm: channel.lengthMm * (channel.supports.length === 0 ? 0.2 : 0.8),
              alongMm: 30,
              acrossMm: 60,
              heightMm: 20
            })
          )
        }
      >
        Add a support
      </button>
    </StripPart>
  )
}
