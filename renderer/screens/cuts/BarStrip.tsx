import { barSource, type CutBar, wholePiece } from '../../../shared-model/cutting'
import { BAR_SOURCE_NAMES, PIECE_STATE_NAMES } from '../../../shared-model/words'
import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'

export interface BarStripProps {
  readonly bar: CutBar
  /** The longest bar of the profile fills the width. */
  readonly longestMm: number
  readonly isChosen: boolean
  readonly pieceId: string | null
  /** null: the bar itself. */
  readonly choose: (pieceId: string | null) => void
}

/** One bar to scale: its pieces in the order they come off it, and what is left. */
export function BarStrip({ bar, longestMm, isChosen, pieceId, choose }: BarStripProps) {
  const say = useSay()
  const channelIds = useApp((state) => state.selection.channelIds)
  const pins = useApp((state) => state.design.atBench?.pins)
  const channels = usePlanState((state) => state.full?.pieces)
  const share = (lengthMm: number): string => `${(lengthMm / longestMm) * 100}%`
  const source = BAR_SOURCE_NAMES[barSource(bar)]
  const left = `${bar.keep ? 'keep' : 'waste'} ${say.length(bar.leftoverMm)}`
  // What is read out holds what is seen, word for word (WCAG 2.2, 2.5.3).
  const named = `${say.length(bar.lengthMm)}, ${source}${bar.leftoverMm > 0 ? `; ${left}` : ''}`
  return (
    <li className="bar-row">
      <button
        type="button"
        className="bar-name"
        aria-pressed={isChosen && pieceId === null}
        aria-label={`Bar ${bar.mark} ${named}`}
        onClick={() => choose(null)}
      >
        <strong>{bar.mark}</strong> {named}
      </button>
      <div className="bar-strip" style={{ inlineSize: share(bar.lengthMm) }}>
        {bar.pieces.map((piece) => {
          const channelId = wholePiece(channels ?? [], piece.pieceId)?.channelId
          const isPinned = pins?.some((pin) => pin.pieceId === piece.pieceId) === true
          const state = PIECE_STATE_NAMES[piece.state]
          return (
            <button
              key={`${piece.pieceId} ${piece.startMm}`}
              type="button"
              className={`bar-piece ${piece.state}${channelId !== undefined && channelIds.includes(channelId) ? ' of-chosen' : ''}`}
              style={{
                insetInlineStart: `${(piece.startMm / bar.lengthMm) * 100}%`,
                inlineSize: `${(piece.lengthMm / bar.lengthMm) * 100}%`
              }}
              aria-pressed={isChosen && pieceId === piece.pieceId}
              aria-label={`Piece ${piece.mark}, ${say.length(piece.lengthMm)}, on bar ${bar.mark}, ${state}${isPinned ? ', pinned' : ''}`}
              title={`${piece.mark} · ${say.length(piece.lengthMm)} · ${state}`}
              onClick={() => choose(piece.pieceId)}
            >
              <span>
                {isPinned ? <Icon name="lock" /> : null}
                {piece.state === 'planned' ? null : <Icon name={piece.state === 'spoiled' ? 'warn' : 'good'} />}
                <b>{piece.mark}</b>
                {piece.state === 'planned' ? `, ${say.length(piece.lengthMm)}` : ''}
              </span>
            </button>
          )
        })}
        {bar.leftoverMm <= 0 ? null : (
          <span
            className="bar-left"
            style={{
              insetInlineStart: `${100 - (bar.leftoverMm / bar.lengthMm) * 100}%`,
              inlineSize: `${(bar.leftoverMm / bar.lengthMm) * 100}%`
            }}
            title={left}
          >
            <span>{left}</span>
          </span>
        )}
      </div>
    </li>
  )
}
