import { addCrop, deleteSites, editSites, lockSites, moveSite } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { useOffered } from '../../catalogue/use-offered'
import { CheckField } from '../../fields/CheckField'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { DailyUseField } from './DailyUseField'
import { SeatFields } from './SeatFields'
import { StripPart } from './StripPart'

const NO_CROP = 'none'

/** The chosen sites: where the hole is, what grows there, what sits in it. */
export function SiteFields({ channel, siteIds }: { readonly channel: Channel; readonly siteIds: readonly string[] }) {
  const edit = useEdit()
  const offered = useOffered()
  const seats = useApp((state) => state.design.seats)
  const sites = channel.sites.filter((site) => siteIds.includes(site.id))
  const [site] = sites
  const crop = useApp((state) => state.design.crops.find((each) => each.id === site?.cropId))
  if (site === undefined) return null
  const sorted = [...channel.sites].sort((a, b) => a.atMm - b.atMm)
  const title = sites.length === 1 ? `Site ${sorted.indexOf(site) + 1}` : `${sites.length} sites`
  const path = `channels.${channel.id}.sites.${site.id}`
  return (
    <>
      <StripPart title={title} open>
        <div className="fields">
          {sites.length === 1 ? (
            <LengthField
              label="From the datum end"
              path={`${path}.atMm`}
              value={site.atMm}
              mostMm={channel.lengthMm}
              commit={(atMm) => edit.design('move a cup site', (design) => moveSite(design, channel.id, site.id, atMm))}
            />
          ) : null}
          <ChoiceField
            label="Crop"
            path={`${path}.cropId`}
            value={site.cropId ?? NO_CROP}
            choices={[
              { value: NO_CROP, label: 'None' },
              ...offered.crops.map((crop) => ({ value: crop.id, label: crop.name }))
            ]}
            commit={(id) =>
              edit.design('change the crop', (design) => {
                const crop = offered.crops.find((each) => each.id === id)
                const planted = crop === undefined ? design : addCrop(design, crop)
                return editSites(planted, channel.id, siteIds, { cropId: crop?.id ?? null })
              })
            }
          />
          <ChoiceField
            label="Seat"
            path={`${path}.seatId`}
            value={site.seatId}
            choices={seats.map((seat) => ({ value: seat.id, label: seat.name === '' ? seat.id : seat.name }))}
            commit={(seatId) =>
              edit.design('change the seat', (design) => editSites(design, channel.id, siteIds, { seatId }))
            }
          />
        </div>
        {crop === undefined ? null : <DailyUseField crop={crop} />}
        <div className="button-row">
          <CheckField
            label="Locked in place"
            value={site.locked}
            commit={(locked) => edit.design('lock sites', (design) => lockSites(design, channel.id, siteIds, locked))}
          />
          <button
            type="button"
            className="button"
            onClick={() => edit.design('take cup sites away', (design) => deleteSites(design, channel.id, siteIds))}
          >
            Take away
          </button>
        </div>
      </StripPart>
      <SeatFields channel={channel} siteIds={siteIds} seatId={site.seatId} />
    </>
  )
}
