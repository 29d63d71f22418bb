import { useState } from 'react'
import { type BarOf, type CutBar, type CutPlan, wholePiece } from '../../../shared-model/cutting'
import { usePlanState } from '../../plan/use-plan'
import { chooseChannel } from '../../store/selection'
import { useActions } from '../../store/use-app'
import { BarActs } from './BarActs'
import { BarStrip } from './BarStrip'
import { PieceActs } from './PieceActs'

interface Chosen {
  readonly barKey: string
  readonly pieceId: string | null
}

/** The bars to scale; a piece or bar that is chosen says what can be done with it. Choosing a piece chooses its channel. */
export function BarsAtBench({ cut }: { readonly cut: CutPlan }) {
  const { select } = useActions()
  const pieces = usePlanState((state) => state.full?.pieces)
  const [chosen, setChosen] = useState<Chosen | null>(null)
  const longestMm = Math.max(1, ...cut.bars.map(({ lengthMm }) => lengthMm))
  const choose = (barKey: string, pieceId: string | null): void => {
    setChosen({ barKey, pieceId })
    const piece = pieceId === null ? undefined : wholePiece(pieces ?? [], pieceId)
    if (piece !== undefined) select(chooseChannel(piece.channelId))
  }
  const bar = barOfChosen(cut, chosen)
  const of: BarOf | null = bar === undefined ? null : { ...bar, profileId: cut.profileId }
  const piece = of?.pieces.find(({ pieceId }) => pieceId === chosen?.pieceId)
  return (
    <div className="bars">
      <ol className="bar-list">
        {cut.bars.map((each) => (
          <BarStrip
            key={each.key}
            bar={each}
            longestMm={longestMm}
            isChosen={each.key === bar?.key}
            pieceId={chosen?.pieceId ?? null}
            choose={(pieceId) => choose(each.key, pieceId)}
          />
        ))}
      </ol>
      {of === null ? (
        <p className="quiet small">Choose a piece or a bar to pin it, or to say what the bench has done with it.</p>
      ) : piece === undefined ? (
        <BarActs bar={of} kerfMm={cut.kerfMm} />
      ) : (
        <PieceActs key={piece.pieceId} bar={of} piece={piece} bars={cut.bars} />
      )}
    </div>
  )
}

/** A piece that is chosen is followed to the bar that it is planned on now; a spoiled one stays where it was cut. */
function barOfChosen({ bars }: CutPlan, chosen: Chosen | null): CutBar | undefined {
  const there = bars.find(({ key }) => key === chosen?.barKey)
  if (chosen === null || chosen.pieceId === null) return there
  const holds = ({ pieces }: CutBar): boolean => pieces.some(({ pieceId }) => pieceId === chosen.pieceId)
  return there !== undefined && holds(there) ? there : (bars.find(holds) ?? there)
}
