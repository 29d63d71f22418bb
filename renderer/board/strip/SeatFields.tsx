import {
  changeCollar,
  changeCup,
  changePlantCollar,
  changeRiser,
  changeSaw,
  copySeat,
  type Design,
  type Edited,
  editSites
} from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { failed } from '../../../shared-model/outcome'
import type { Seat } from '../../../shared-model/seating'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { SawAdviceList } from './SawAdviceList'
import { SeatStack } from './SeatStack'
import { StripPart } from './StripPart'

const NONE = 'none'
const named = (part: { readonly id: string; readonly name: string }) => ({ value: part.id, label: part.name })
const missing = (what: string, id: string): Edited<Design> => failed({ code: 'edit-not-found', figures: { what, id } })

interface SeatFieldsProps {
  readonly channel: Channel
  readonly siteIds: readonly string[]
  readonly seatId: string
}

/** What sits in the hole, from the hole up; a seat is shared by all sites that name it. */
export function SeatFields({ channel, siteIds, seatId }: SeatFieldsProps) {
  const edit = useEdit()
  const offered = useOffered()
  const seat = useApp((state) => state.design.seats.find((each) => each.id === seatId))
  const uses = useApp(
    (state) => state.design.channels.flatMap((each) => each.sites).filter((site) => site.seatId === seatId).length
  )
  if (seat === undefined) return null
  const path = `seats.${seat.id}`
  const partOf = (kind: Seat['stack'][number]['kind']): string =>
    seat.stack.find((each) => each.kind === kind)?.partId ?? NONE
  const parts = [...offered.cups, ...offered.risers, ...offered.collars, ...offered.plantCollars]
  const nameOf = (id: string): string => parts.find((each) => each.id === id)?.name ?? id
  return (
    <StripPart title={`Seat: ${seat.name === '' ? seat.id : seat.name}`} path={path} open>
      <p className="quiet small">
        {uses === 1 ? 'One site uses this seat.' : `${uses} sites use this seat; a change goes to all of them.`}
      </p>
      <ChoiceField
        label="Hole saw"
        path={`${path}.sawId`}
        value={seat.sawId}
        choices={offered.saws.map(named)}
        commit={(id) =>
          edit.design('change the saw', (design) => {
            const saw = offered.saws.find((each) => each.id === id)
            return saw === undefined ? missing('hole saw', id) : changeSaw(design, seat.id, saw)
          })
        }
      />
      <ChoiceField
        label="Cup"
        path={`${path}.cup`}
        value={partOf('cup')}
        choices={offered.cups.map(named)}
        commit={(id) =>
          edit.design('change the cup', (design) => {
            const cup = offered.cups.find((each) => each.id === id)
            return cup === undefined ? missing('cup', id) : changeCup(design, seat.id, cup)
          })
        }
      />
      <div className="fields">
        <ChoiceField
          label="Riser"
          value={partOf('riser')}
          choices={[{ value: NONE, label: 'None' }, ...offered.risers.map(named)]}
          commit={(id) =>
            edit.design('change the riser', (design) =>
              changeRiser(design, seat.id, offered.risers.find((each) => each.id === id) ?? null)
            )
          }
        />
        <ChoiceField
          label="Foam collar"
          value={partOf('collar')}
          choices={[{ value: NONE, label: 'None' }, ...offered.collars.map(named)]}
          commit={(id) =>
            edit.design('change the collar', (design) => {
              const collar = offered.collars.find((each) => each.id === id) ?? null
              const saws = offered.saws.filter((saw) => saw.id === collar?.outerSawId || saw.id === collar?.innerSawId)
              return changeCollar(design, seat.id, collar, saws)
            })
          }
        />
        <ChoiceField
          label="Plant collar"
          value={partOf('plant-collar')}
          choices={[{ value: NONE, label: 'None' }, ...offered.plantCollars.map(named)]}
          commit={(id) =>
            edit.design('change the plant collar', (design) =>
              changePlantCollar(design, seat.id, offered.plantCollars.find((each) => each.id === id) ?? null)
            )
          }
        />
      </div>
      {uses > siteIds.length ? (
        <button
          type="button"
          className="button"
          onClick={() =>
            edit.design('give sites a seat of their own', (design) => {
              const copied = copySeat(design, seat.id, `${seat.name} 2`)
              const own = copied.ok ? copied.value.seats.at(-1) : undefined
              return copied.ok && own !== undefined
                ? editSites(copied.value, channel.id, siteIds, { seatId: own.id })
                : copied
            })
          }
        >
          A seat of their own for the chosen sites
        </button>
      ) : null}
      <SeatStack channelId={channel.id} siteId={siteIds[0] ?? ''} nameOf={nameOf} />
      <SawAdviceList seatId={seat.id} sawId={seat.sawId} />
    </StripPart>
  )
}
