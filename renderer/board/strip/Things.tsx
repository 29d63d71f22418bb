import type { Channel } from '../../../shared-model/layout'
import { useLivePlan } from '../../plan/use-plan'
import { chooseChannel, chooseSite, toggleChannel, toggleSite } from '../../store/selection'
import { useActions, useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'

/** Every channel and site as a list: the same choosing as on the board, in plain elements. */
export function Things() {
  const channels = useApp((state) => state.design.channels)
  const selection = useApp((state) => state.selection)
  const plan = useLivePlan()
  const { select } = useActions()
  const say = useSay()
  return (
    <section className="strip-part" aria-label="Channels and sites">
      <h2>Channels</h2>
      {channels.length === 0 ? <p className="quiet small">None yet.</p> : null}
      <ul className="things">
        {channels.map((channel, index) => {
          const chosen = selection.channelIds.includes(channel.id)
          const mark = plan.channels.find((each) => each.channelId === channel.id)?.mark ?? `${index + 1}`
          return (
            <li key={channel.id}>
              <button
                type="button"
                className="button"
                aria-pressed={chosen}
                onClick={(event) =>
                  select(
                    event.shiftKey || event.ctrlKey ? toggleChannel(selection, channel.id) : chooseChannel(channel.id)
                  )
                }
              >
                <span className="button-row">
                  <span className="mark-number">{mark}</span>
                  {channel.name === '' ? `Channel ${mark}` : channel.name}
                </span>
                <span className="quiet small figure">
                  {say.length(channel.lengthMm)} · {channel.sites.length}{' '}
                  {channel.sites.length === 1 ? 'site' : 'sites'}
                </span>
              </button>
              {chosen && selection.channelIds.length === 1 ? <Sites channel={channel} /> : null}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

function Sites({ channel }: { readonly channel: Channel }) {
  const selection = useApp((state) => state.selection)
  const crops = useApp((state) => state.design.crops)
  const { select } = useActions()
  const say = useSay()
  const sorted = [...channel.sites].sort((a, b) => a.atMm - b.atMm)
  return (
    <ul>
      {sorted.map((site, serial) => (
        <li key={site.id}>
          <button
            type="button"
            className="button"
            aria-pressed={selection.siteIds.includes(site.id)}
            onClick={(event) =>
              select(
                event.shiftKey || event.ctrlKey
                  ? toggleSite(selection, channel.id, site.id)
                  : chooseSite(channel.id, site.id)
              )
            }
          >
            <span>
              Site {serial + 1}
              {site.locked ? ' (locked)' : ''}
            </span>
            <span className="quiet small figure">
              {say.length(site.atMm)} · {crops.find((crop) => crop.id === site.cropId)?.name ?? 'empty'}
            </span>
          </button>
        </li>
      ))}
    </ul>
  )
}
