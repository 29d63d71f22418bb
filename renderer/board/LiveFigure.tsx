import { useStore } from 'zustand'
import { mm, showLength } from '../../shared-model/units'
import { useApp } from '../store/use-app'
import { boardStore } from './board-store'

/** The figure that follows the hand; a typed one takes its place and Enter sets it exactly. */
export function LiveFigure() {
  const live = useStore(boardStore, (state) => state.live)
  const typed = useStore(boardStore, (state) => state.typed)
  const shows = useApp((state) => state.workshop.shows)
  if (live === null) return null
  return (
    <div className="live-figure" role="status" aria-label="Figure while dragging">
      <span className="quiet small">{live.label}</span>
      <strong className="figure">{typed === '' ? showLength(mm(live.valueMm), shows) : typed}</strong>
      <span className="quiet small">{typed === '' ? 'Type a figure to set it exactly' : 'Enter sets it'}</span>
    </div>
  )
}
