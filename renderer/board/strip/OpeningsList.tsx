import { addOpening } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { OPENING_NAMES } from '../../../shared-model/words'
import { chooseOpening } from '../../store/selection'
import { useActions } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { StripPart } from './StripPart'

/** Fill ports, overflows, drains, level sights: each is chosen to change it. */
export function OpeningsList({ channel }: { readonly channel: Channel }) {
  const edit = useEdit()
  const say = useSay()
  const { select } = useActions()
  return (
    <StripPart title={`Service openings (${channel.openings.length})`} path={`channels.${channel.id}.openings`}>
      <ul className="things">
        {channel.openings.map((opening) => (
          <li key={opening.id}>
            <button
              type="button"
              className="button"
              aria-pressed={false}
              onClick={() => select(chooseOpening(channel.id, opening.id))}
            >
              <span>{OPENING_NAMES[opening.kind]}</span>
              <span className="quiet small figure">{say.length(opening.atMm)}</span>
            </button>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button plain small"
        onClick={() =>
          edit.design('add a service opening', (design) =>
            addOpening(
              design,
              channel.id,
              {
                kind: 'fill-port',
                face: 'top',
                atMm: channel.lengthMm / 2,
                heightMm: 0,
                diameterMm: 20,
                closure: 'plug'
              },
              null
            )
          )
        }
      >
        Add a service opening
      </button>
    </StripPart>
  )
}
