import { memo } from 'react'
import {
  changeClosure,
  changeProfile,
  editChannels,
  layOnSide,
  placeChannel,
  resizeChannel,
  turnChannel
} from '../../../shared-model/design'
import type { Channel, Heading } from '../../../shared-model/layout'
import { failed } from '../../../shared-model/outcome'
import { closureFor, fittingClosures } from '../../catalogue/fitting-closures'
import { useOffered } from '../../catalogue/use-offered'
import { CheckField } from '../../fields/CheckField'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { usePlanState } from '../../plan/use-plan'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { DrawDownPart } from './follows/DrawDownPart'
import { LevelsByStage } from './follows/LevelsByStage'
import { WeightPart } from './follows/WeightPart'
import { OpeningsList } from './OpeningsList'
import { SiteRowFields } from './SiteRowFields'
import { StripPart } from './StripPart'
import { SupportsFields } from './SupportsFields'

const HEADINGS: readonly { readonly value: `${Heading}`; readonly label: string }[] = [
  { value: '0', label: 'Left to right' },
  { value: '180', label: 'Right to left' },
  { value: '90', label: 'Front to glass' },
  { value: '270', label: 'Glass to front' }
]
const HEADING_OF: Readonly<Record<`${Heading}`, Heading>> = { '0': 0, '90': 90, '180': 180, '270': 270 }

/** The figures of one channel. */
export const ChannelFields = memo(OneChannel)

function OneChannel({ channel }: { readonly channel: Channel }) {
  const edit = useEdit()
  const offered = useOffered()
  const say = useSay()
  const part = usePlanState(({ live }) => live.channels.find((each) => each.channelId === channel.id))
  const overallMm = part?.layout.overallLengthMm
  const path = `channels.${channel.id}`
  const profile = offered.profiles.find((each) => each.id === channel.profileId)
  const fitting = profile === undefined ? [] : fittingClosures(offered.closures, profile)
  const closures = (current: string) =>
    offered.closures
      .filter((each) => fitting.includes(each) || each.id === current)
      .map((each) => ({ value: each.id, label: fitting.includes(each) ? each.name : `${each.name} (does not fit)` }))
  const setClosure = (end: 'datum' | 'far', id: string): string | null =>
    edit.design('change an end closure', (design) => {
      const closure = offered.closures.find((each) => each.id === id)
      return closure === undefined
        ? failed({ code: 'edit-not-found', figures: { what: 'end closure', id } })
        : changeClosure(design, [channel.id], [end], closure)
    })
  return (
    <>
      <StripPart title={channel.name === '' ? 'Channel' : channel.name} open>
        <div className="fields">
          <LengthField
            label="Cut length"
            path={`${path}.lengthMm`}
            value={channel.lengthMm}
            hint={overallMm === undefined ? undefined : `Overall ${say.length(overallMm)} with its ends`}
            commit={(lengthMm) =>
              edit.design('change a length', (design) => resizeChannel(design, channel.id, lengthMm, 'far'))
            }
          />
          <NumberField
            label="Fill share"
            unit="%"
            least={0}
            most={100}
            path={`${path}.fillShare`}
            value={channel.fillShare * 100}
            commit={(percent) =>
              edit.design('change the fill', (design) =>
                editChannels(design, [channel.id], { fillShare: percent / 100 })
              )
            }
          />
          <LengthField
            label="Datum end from the left"
            path={`${path}.xMm`}
            negative
            value={channel.xMm}
            commit={(xMm) =>
              edit.design('move a channel', (design) => placeChannel(design, channel.id, xMm, channel.yMm))
            }
          />
          <LengthField
            label="Centre from the front"
            path={`${path}.yMm`}
            negative
            value={channel.yMm}
            commit={(yMm) =>
              edit.design('move a channel', (design) => placeChannel(design, channel.id, channel.xMm, yMm))
            }
          />
        </div>
        <ChoiceField
          label="Profile"
          path={`${path}.profileId`}
          value={channel.profileId}
          choices={offered.profiles.map((each) => ({ value: each.id, label: each.name }))}
          commit={(id) =>
            edit.design('change the profile', (design) => {
              const chosen = offered.profiles.find((each) => each.id === id)
              const closure = chosen === undefined ? undefined : closureFor(offered.closures, chosen)
              return chosen === undefined || closure === undefined
                ? failed({ code: 'edit-not-found', figures: { what: 'profile', id } })
                : changeProfile(design, [channel.id], chosen, closure)
            })
          }
        />
        <div className="fields">
          <ChoiceField
            label="Datum end"
            path={`${path}.datumClosureId`}
            value={channel.datumClosureId}
            choices={closures(channel.datumClosureId)}
            commit={(id) => setClosure('datum', id)}
          />
          <ChoiceField
            label="Far end"
            path={`${path}.farClosureId`}
            value={channel.farClosureId}
            choices={closures(channel.farClosureId)}
            commit={(id) => setClosure('far', id)}
          />
          <ChoiceField
            label="Runs"
            path={`${path}.heading`}
            value={`${channel.heading}`}
            choices={HEADINGS}
            commit={(heading) =>
              edit.design('turn a channel', (design) => turnChannel(design, channel.id, HEADING_OF[heading]))
            }
          />
          <TextField
            label="Name"
            path={`${path}.name`}
            value={channel.name}
            commit={(name) => edit.design('name a channel', (design) => editChannels(design, [channel.id], { name }))}
          />
        </div>
        <CheckField
          label="Lies on its other side"
          value={channel.turned}
          commit={(turned) =>
            edit.design('lay a channel on its side', (design) => layOnSide(design, channel.id, turned))
          }
        />
      </StripPart>
      <SiteRowFields channel={channel} />
      <SupportsFields channel={channel} />
      <OpeningsList channel={channel} />
      {part === undefined ? null : (
        <>
          <LevelsByStage part={part} />
          <DrawDownPart part={part} />
          <WeightPart part={part} />
        </>
      )}
    </>
  )
}
