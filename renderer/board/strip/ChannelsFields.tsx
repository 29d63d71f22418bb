import { useState } from 'react'
import {
  addCrop,
  changeProfile,
  type Design,
  type Edited,
  editChannels,
  editSites,
  matchSites,
  resizeChannel,
  spreadSites,
  staggerSites
} from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { failed, ok } from '../../../shared-model/outcome'
import { closureFor } from '../../catalogue/fitting-closures'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { useEdit } from '../../store/use-edit'
import { StripPart } from './StripPart'

const SEVERAL = 'several'

/** Fields that several chosen channels share; a change goes to all of them in one step. */
export function ChannelsFields({ channels }: { readonly channels: readonly Channel[] }) {
  const edit = useEdit()
  const offered = useOffered()
  const [refused, setRefused] = useState<string | null>(null)
  const ids = channels.map((each) => each.id)
  const [first, ...others] = channels
  if (first === undefined) return null
  const inTurn =
    (of: readonly Channel[], change: (design: Design, channel: Channel) => Edited<Design>) =>
    (design: Design): Edited<Design> =>
      of.reduce<Edited<Design>>((made, channel) => (made.ok ? change(made.value, channel) : made), ok(design))
  const shared = <T extends string>(of: (channel: Channel) => readonly T[]): T | typeof SEVERAL => {
    const all = channels.flatMap(of)
    return all[0] !== undefined && all.every((each) => each === all[0]) ? all[0] : SEVERAL
  }
  const profileId = shared((channel) => [channel.profileId])
  const cropId = shared((channel) => channel.sites.map((site) => site.cropId ?? SEVERAL))
  const several = { value: SEVERAL, label: 'Several' }
  const arrange = (what: string, change: (design: Design) => Edited<Design>): void =>
    setRefused(edit.design(what, change))
  const spreadable = channels.filter((each) => each.sites.length > 2)
  const setProfile = (id: string): string | null => {
    const profile = offered.profiles.find((each) => each.id === id)
    const closure = profile === undefined ? undefined : closureFor(offered.closures, profile)
    if (profile === undefined || closure === undefined) return null
    return edit.design('change the profile', (design) => changeProfile(design, ids, profile, closure))
  }
  const setCrop = (id: string): string | null =>
    edit.design('change the crop', (design) => {
      const crop = offered.crops.find((each) => each.id === id)
      if (crop === undefined) return failed({ code: 'edit-not-found', figures: { what: 'crop', id } })
      return inTurn(channels, (made, channel) => {
        const siteIds = channel.sites.map((site) => site.id)
        return siteIds.length === 0 ? ok(made) : editSites(made, channel.id, siteIds, { cropId: crop.id })
      })(addCrop(design, crop))
    })
  return (
    <StripPart title={`${channels.length} channels`} open>
      <div className="fields">
        <LengthField
          label="Cut length of all"
          value={first.lengthMm}
          commit={(lengthMm) =>
            edit.design(
              'change lengths',
              inTurn(channels, (design, channel) => resizeChannel(design, channel.id, lengthMm, 'far'))
            )
          }
        />
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
      </div>
      <ChoiceField
        label="Profile of all"
        value={profileId}
        choices={[
          ...(profileId === SEVERAL ? [several] : []),
          ...offered.profiles.map((each) => ({ value: each.id, label: each.name }))
        ]}
        commit={setProfile}
      />
      <ChoiceField
        label="Crop of all their sites"
        value={cropId}
        choices={[
          ...(cropId === SEVERAL ? [several] : []),
          ...offered.crops.map((each) => ({ value: each.id, label: each.name }))
        ]}
        commit={setCrop}
      />
      <div className="button-row">
        <button
          type="button"
          className="button"
          disabled={spreadable.length === 0}
          onClick={() =>
            arrange(
              'spread the sites',
              inTurn(spreadable, (design, channel) => spreadSites(design, channel.id))
            )
          }
        >
          Spread evenly
        </button>
        <button
          type="button"
          className="button"
          onClick={() =>
            arrange(
              'match the sites',
              inTurn(others, (design, channel) => matchSites(design, channel.id, first.id))
            )
          }
        >
          Sites as in the first
        </button>
        <button
          type="button"
          className="button"
          onClick={() =>
            arrange(
              'stagger the sites',
              inTurn(others, (design, channel) => staggerSites(design, channel.id, first.id))
            )
          }
        >
          Stagger against the first
        </button>
      </div>
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
    </StripPart>
  )
}
