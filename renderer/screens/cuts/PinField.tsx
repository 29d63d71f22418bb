import { pinPiece } from '../../../shared-model/design'
import { ChoiceField } from '../../fields/ChoiceField'
import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { wordsOf } from '../../plan/wording'
import { useActions, useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import type { PlannedPiece } from './planned-piece'

const ANY_BAR = ''

/** Which bar a piece is cut from: whichever is best, or the one it is pinned to whatever the rest is. */
export function PinField({ bar, piece, bars }: PlannedPiece) {
  const say = useSay()
  const edit = useEdit()
  const { look } = useActions()
  const isWhole = usePlanState((state) => state.full?.pieces.some(({ id }) => id === piece.pieceId) === true)
  const pinnedTo = useApp((state) => state.design.atBench?.pins.find((pin) => pin.pieceId === piece.pieceId)?.barKey)
  const shows = useApp((state) => state.workshop.shows)
  const refused = usePlanState((state) =>
    state.full?.findings.find(({ code, figures }) => code === 'pin-refused' && figures.mark === piece.mark)
  )
  if (!isWhole) return <p className="quiet small">A part of a joined piece is not pinned.</p>
  const pin = (barKey: string | null): void => {
    const said = edit.design(barKey === null ? 'unpin a piece' : 'pin a piece to a bar', (design) =>
      pinPiece(design, piece.pieceId, barKey)
    )
    if (said !== null) look({ notice: { text: said } })
  }
  const isGone = pinnedTo !== undefined && bars.every(({ key }) => key !== pinnedTo)
  return (
    <div className="field">
      <ChoiceField
        label="Cut it from"
        value={pinnedTo ?? ANY_BAR}
        choices={[
          { value: ANY_BAR, label: 'whichever bar is best' },
          ...bars.map(({ key, mark, lengthMm }) => ({ value: key, label: `bar ${mark}, ${say.length(lengthMm)}` })),
          ...(isGone ? [{ value: pinnedTo, label: 'a bar that is not there any more' }] : [])
        ]}
        commit={(key) => pin(key === ANY_BAR ? null : key)}
      />
      {pinnedTo === undefined ? (
        <button type="button" className="button" onClick={() => pin(bar.key)}>
          <Icon name="lock" />
          Pin it to bar {bar.mark}
        </button>
      ) : (
        <button type="button" className="button" onClick={() => pin(null)}>
          Unpin it
        </button>
      )}
      {pinnedTo === undefined || refused === undefined ? null : (
        <p className="error" role="alert">
          {wordsOf(refused, shows)}
        </p>
      )}
    </div>
  )
}
