import { useState } from 'react'
import { cutPiece, drillPiece, spoilPiece } from '../../../shared-model/design'
import { PIECE_STATE_NAMES } from '../../../shared-model/words'
import { LengthField } from '../../fields/LengthField'
import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { useActions } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { PinField } from './PinField'
import type { PlannedPiece } from './planned-piece'

/** What can be done with a piece: pinned to a bar, shown on the board, and said to be cut, drilled or spoiled. */
export function PieceActs({ bar, piece, bars }: PlannedPiece) {
  const say = useSay()
  const edit = useEdit()
  const { look } = useActions()
  const stale = usePlanState((state) => state.stale)
  const [goodMm, setGood] = useState(0)
  const done = (what: string, change: Parameters<typeof edit.design>[1]): void => {
    const said = edit.design(what, change)
    if (said !== null) look({ notice: { text: said } })
  }
  const spoil = (what: string): void => done(what, (design) => spoilPiece(design, bar, piece.pieceId, goodMm))
  const name = `Piece ${piece.mark}`
  return (
    <section className="bar-acts" aria-label={name}>
      <div className="part-head">
        <h3>
          {name}, {say.length(piece.lengthMm)}, {PIECE_STATE_NAMES[piece.state]}
        </h3>
        <button type="button" className="button" onClick={() => look({ screen: 'board' })}>
          Show its channel on the board
        </button>
      </div>
      {piece.state === 'spoiled' ? (
        <p className="quiet">It is cut again from what is left.</p>
      ) : (
        <div className="bar-acts-row">
          {piece.state === 'planned' ? <PinField bar={bar} piece={piece} bars={bars} /> : null}
          <LengthField
            label="If it is spoiled: good length"
            value={goodMm}
            leastMm={0}
            mostMm={piece.lengthMm}
            commit={(valueMm) => {
              setGood(valueMm)
              return null
            }}
            hint="What can still be cut from it"
          />
          <div className="button-row">
            {piece.state === 'planned' ? (
              <button
                type="button"
                className="button"
                disabled={stale}
                onClick={() => done('mark a piece as cut', (design) => cutPiece(design, bar, piece.pieceId))}
              >
                <Icon name="good" />
                It is cut
              </button>
            ) : null}
            {piece.state === 'drilled' ? null : (
              <button
                type="button"
                className="button"
                disabled={stale}
                onClick={() => done('mark a piece as drilled', (design) => drillPiece(design, bar, piece.pieceId))}
              >
                <Icon name="good" />
                It is cut and drilled
              </button>
            )}
            <button type="button" className="button" disabled={stale} onClick={() => spoil('mark a piece as spoiled')}>
              <Icon name="warn" />
              It is spoiled
            </button>
            <button type="button" className="button" disabled={stale} onClick={() => spoil('mark a hole as wrong')}>
              <Icon name="warn" />A hole is wrong
            </button>
          </div>
        </div>
      )}
      <p className="quiet small">
        Pieces before it on its bar count as cut when it is. A spoiled piece is cut again, and the sheet gets a new
        revision.
      </p>
    </section>
  )
}
