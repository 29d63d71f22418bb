import { SideSection } from '../section/SideSection'
import { BoardSurface } from './BoardSurface'
import { BoardToolbar } from './BoardToolbar'
import { BoardStrip } from './strip/BoardStrip'

/** The sketch: tools, the sill from above, the strip of figures, the side section. */
export function BoardScreen() {
  return (
    <div className="board">
      <h1 className="hidden-text">Board</h1>
      <BoardToolbar />
      <BoardSurface />
      <BoardStrip />
      <SideSection />
    </div>
  )
}
