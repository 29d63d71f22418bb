import { useApp } from '../../store/use-app'
import { FitsPanel } from '../fits/FitsPanel'
import { useDrawn } from '../use-drawn'
import { useStill } from '../use-still'
import { ChannelFields } from './ChannelFields'
import { ChannelsFields } from './ChannelsFields'
import { SillWeight } from './follows/SillWeight'
import { OpeningFields } from './OpeningFields'
import { PinnedFields } from './PinnedFields'
import { PinnedThingFields } from './PinnedThingFields'
import { PlaceFields } from './PlaceFields'
import { SillFields } from './SillFields'
import { SiteFields } from './SiteFields'
import { Things } from './Things'
import { WaterFields } from './WaterFields'

/** The figures beside the board: what there is, then what is chosen, then the sill and its place. The board comes first. */
export function BoardStrip() {
  const drawn = useDrawn()
  return (
    <aside className="board-strip" aria-label="Figures" aria-busy={!drawn}>
      {drawn ? <Figures /> : null}
    </aside>
  )
}

function Figures() {
  const { channelIds, siteIds, openingId, pinnedId } = useApp((state) => state.selection)
  const channels = useApp((state) => state.design.channels)
  const chosen = useStill(channels.filter((each) => channelIds.includes(each.id)))
  const only = chosen.length === 1 ? chosen[0] : undefined
  const fitsOpen = useApp((state) => state.view.fitsOpen)
  const opening = only?.openings.find((each) => each.id === openingId)
  return (
    <>
      {fitsOpen ? <FitsPanel /> : null}
      <Things />
      <div className="chosen-fields">
        {pinnedId === null ? null : <PinnedThingFields key={pinnedId} id={pinnedId} />}
        {only !== undefined && opening !== undefined ? <OpeningFields channel={only} opening={opening} /> : null}
        {only !== undefined && siteIds.length > 0 ? <SiteFields channel={only} siteIds={siteIds} /> : null}
        {only !== undefined ? <ChannelFields key={only.id} channel={only} /> : null}
        {chosen.length > 1 ? <ChannelsFields channels={chosen} /> : null}
      </div>
      <SillFields open={chosen.length === 0 && pinnedId === null} />
      <SillWeight />
      <PinnedFields />
      <WaterFields />
      <PlaceFields />
    </>
  )
}
