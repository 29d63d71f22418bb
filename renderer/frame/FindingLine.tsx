import { applyFix } from '../../shared-model/design'
import type { PlanFinding } from '../../shared-model/plan'
import { Icon } from '../icons/Icon'
import { SEVERITY_NAMES, wordsOf } from '../plan/wording'
import { useActions, useApp } from '../store/use-app'
import { useGoTo } from './use-go-to'
import { usePlaceWords } from './use-place-words'

/** One finding: what it says, where it is, and the change that clears it. */
export function FindingLine({ finding }: { readonly finding: PlanFinding }) {
  const shows = useApp((state) => state.workshop.shows)
  const { editDesign } = useActions()
  const goTo = useGoTo()
  const { fix, where, severity } = finding
  const place = usePlaceWords(where)
  const placed = where.field !== undefined || where.channelId !== undefined
  return (
    <li className="finding">
      <span className={`tag ${severity}`}>
        <Icon name={severity} />
        {SEVERITY_NAMES[severity]}
      </span>
      <span>
        {place === '' ? null : <strong>{place}: </strong>}
        {wordsOf(finding, shows)}
      </span>
      <span className="button-row">
        {placed ? (
          <button type="button" className="button" onClick={() => goTo(where)}>
            Show
          </button>
        ) : null}
        {fix === undefined ? null : (
          <button
            type="button"
            className="button"
            onClick={() => editDesign('clear a finding', (design) => applyFix(design, fix))}
          >
            Mend it
          </button>
        )}
      </span>
    </li>
  )
}
