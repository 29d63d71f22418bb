import { memo } from 'react'
import type { Channel } from '../../../shared-model/layout'
import { OPENING_NAMES } from '../../../shared-model/words'
import {
  chooseChannel,
  chooseOpening,
  choosePinned,
  chooseSite,
  toggleChannel,
  toggleSite
} from '../../store/selection'
import { useActions, useApp, useAppStore } from '../../store/use-app'
import { useSay } from '../../store/use-say'
import { usePinnedNames } from '../pinned/use-pinned-names'

/** Every channel and site as a list: the same choosing as on the board, in plain elements. */
export function Things() {
  const channels = useApp((state) => state.design.channels)
  const selection = useApp((state) => state.selection)
  return (
    <section className="strip-part" aria-label="Channels and sites">
      <h2>Channels</h2>
      {channels.length === 0 ? <p className="quiet small">None yet.</p> : null}
      <ul className="things">
        {channels.map((channel, index) => {
          const chosen = selection.channelIds.includes(channel.id)
          return (
            <Row
              key={channel.id}
              channelId={channel.id}
              mark={`${index + 1}`}
              name={channel.name}
              lengthMm={channel.lengthMm}
              sites={channel.sites}
              openings={channel.openings}
              chosen={chosen}
              only={chosen && selection.channelIds.length === 1}
            />
          )
        })}
      </ul>
      <Pinned />
    </section>
  )
}

/** Dimensions and notes pinned to the sill; nothing where there are none. */
function Pinned() {
  const dimensions = useApp((state) => state.design.dimensions)
  const notes = useApp((state) => state.design.notes)
  const pinnedId = useApp((state) => state.selection.pinnedId)
  const { select } = useActions()
  const names = usePinnedNames()
  if (dimensions.length + notes.length === 0) return null
  return (
    <ul className="things" aria-label="Pinned to the sill">
      {[...dimensions, ...notes].map(({ id }) => (
        <li key={id}>
          <button
            type="button"
            className="button"
            aria-pressed={pinnedId === id}
            onClick={() => select(choosePinned(id))}
          >
            {names(id)}
          </button>
        </li>
      ))}
    </ul>
  )
}

interface RowProps extends SitesProps {
  readonly mark: string
  readonly name: string
  readonly lengthMm: number
  readonly chosen: boolean
  readonly only: boolean
}

/** A channel of the list; where it stands on the sill is not shown here, so moving it does not touch this. */
const Row = memo(function Row({ channelId, mark, name, lengthMm, sites, openings, chosen, only }: RowProps) {
  const store = useAppStore()
  const say = useSay()
  return (
    <li>
      <button
        type="button"
        className="button"
        aria-pressed={chosen}
        onClick={(event) =>
          store.do.select(
            event.shiftKey || event.ctrlKey
              ? toggleChannel(store.getState().selection, channelId)
              : chooseChannel(channelId)
          )
        }
      >
        <span className="button-row">
          <span className="mark-number">{mark}</span>
          {name === '' ? `Channel ${mark}` : name}
        </span>
        <span className="quiet small figure">
          {say.length(lengthMm)} · {sites.length} {sites.length === 1 ? 'site' : 'sites'}
        </span>
      </button>
      {only ? <Sites channelId={channelId} sites={sites} openings={openings} /> : null}
    </li>
  )
})

interface SitesProps {
  readonly channelId: string
  readonly sites: Channel['sites']
  readonly openings: Channel['openings']
}

const Sites = memo(function Sites({ channelId, sites, openings }: SitesProps) {
  const selection = useApp((state) => state.selection)
  const crops = useApp((state) => state.design.crops)
  const { select } = useActions()
  const say = useSay()
  const sorted = [...sites].sort((a, b) => a.atMm - b.atMm)
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
                  ? toggleSite(selection, channelId, site.id)
                  : chooseSite(channelId, site.id)
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
      {openings.map((opening) => (
        <li key={opening.id}>
          <button
            type="button"
            className="button"
            aria-pressed={selection.openingId === opening.id}
            onClick={() => select(chooseOpening(channelId, opening.id))}
          >
            <span>{OPENING_NAMES[opening.kind]}</span>
            <span className="quiet small figure">{say.length(opening.atMm)}</span>
          </button>
        </li>
      ))}
    </ul>
  )
})
