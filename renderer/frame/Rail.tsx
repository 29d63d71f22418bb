import { Icon } from '../icons/Icon'
import { useActions, useApp } from '../store/use-app'
import { SCREENS } from '../store/view'
import { SCREEN_NAMES } from './screen-names'

/** The rooms of the job, one of them open. */
export function Rail() {
  const screen = useApp((state) => state.view.screen)
  const { look } = useActions()
  return (
    <nav className="rail" aria-label="Rooms of the job">
      <ul>
        {SCREENS.map((each) => (
          <li key={each}>
            <button
              type="button"
              className="button"
              aria-current={each === screen ? 'page' : undefined}
              onClick={() => look({ screen: each })}
            >
              <Icon name={SCREEN_NAMES[each].icon} />
              {SCREEN_NAMES[each].name}
            </button>
          </li>
        ))}
      </ul>
    </nav>
  )
}
