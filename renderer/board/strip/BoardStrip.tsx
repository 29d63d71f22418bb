import { useApp } from '../../store/use-app'
import { FitsPanel } from '../fits/FitsPanel'
import { ChannelFields } from './ChannelFields'
import { ChannelsFields } from './ChannelsFields'
import { OpeningFields } from './OpeningFields'
import { PinnedFields } from './PinnedFields'
import { PlaceFields } from './PlaceFields'
import { SillFields } from './SillFields'
import { SiteFields } from './SiteFields'
import { Things } from './Things'
import { WaterFields } from './WaterFields'

/** The figures beside the board: what there is, then what is chosen, then the sill and its place. */
export function BoardStrip() {
  const { channelIds, siteIds, openingId } = useApp((state) => state.selection)
  const channels = useApp((state) => state.design.channels)
  const chosen = channels.filter((each) => channelIds.includes(each.id))
  const only = chosen.length === 1 ? chosen[0] : undefined
  const fitsOpen = useApp((state) => state.view.fitsOpen)
  const opening = only?.openings.find((each) => each.id === openingId)
  return (
    <aside className="board-strip" aria-label="Figures">
      {fitsOpen ? <FitsPanel /> : null}
      <Things />
      <div className="chosen-fields">
        {only !== undefined && opening !== undefined ? <OpeningFields channel={only} opening={opening} /> : null}
        {only !== undefined && siteIds.length > 0 ? <SiteFields channel={only} siteIds={siteIds} /> : null}
        {only !== undefined ? <ChannelFields key={only.id} channel={only} /> : null}
        {chosen.length > 1 ? <ChannelsFields channels={chosen} /> : null}
      </div>
      <SillFields open={chosen.length === 0} />
      <PinnedFields />
      <WaterFields />
      <PlaceFields />
    </aside>
  )
}
