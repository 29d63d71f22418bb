import { plainOrder } from '../../shared-model/words'
import { Icon } from '../icons/Icon'
import { problemText } from '../plan/wording'
import { useActions, useApp } from '../store/use-app'

/** A line that says what could not be done; it stays until it is put away. */
export function Notice() {
  const notice = useApp((state) => state.view.notice)
  const shows = useApp((state) => state.workshop.shows)
  const { look } = useActions()
  return (
    <div className="notice" role="alert">
      {notice === null ? null : (
        <div>
          <span>{'text' in notice ? plainOrder(notice.text) : problemText(notice.problem, shows)}</span>
          <button type="button" className="button" onClick={() => look({ notice: null })}>
            <Icon name="close" />
            Put away
          </button>
        </div>
      )}
    </div>
  )
}
