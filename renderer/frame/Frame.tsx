import { type ComponentType, lazy, Suspense, useCallback } from 'react'
import { BoardScreen } from '../board/BoardScreen'
import { bareDesign } from '../catalogue/bare-design'
import { useServices } from '../documents/use-documents'
import { useDroppedFile } from '../documents/use-dropped-file'
import { useApp, useAppStore } from '../store/use-app'
import type { Screen } from '../store/view'
import { AskDialog } from './AskDialog'
import { FindingsStrip } from './FindingsStrip'
import { KeepsStanding } from './KeepsStanding'
import { Notice } from './Notice'
import { Rail } from './Rail'
import { Said } from './Said'
import { StartScreen } from './StartScreen'
import { SCREEN_NAMES } from './screen-names'
import { TopBar } from './TopBar'
import { useShortcuts } from './use-shortcuts'

const ROOMS: Readonly<Record<Screen, ComponentType>> = {
  board: BoardScreen,
  cuts: lazy(() => import('../screens/cuts/CutsScreen')),
  bench: lazy(() => import('../screens/bench/BenchScreen')),
  materials: lazy(() => import('../screens/materials/MaterialsScreen')),
  price: lazy(() => import('../screens/price/PriceScreen')),
  sheet: lazy(() => import('../screens/sheet/SheetScreen')),
  workshop: lazy(() => import('../screens/workshop/WorkshopScreen'))
}

/** The window: what is open at the top, rooms at the side, the room itself, findings at the foot. */
export function Frame() {
  const screen = useApp((state) => state.view.screen)
  const started = useApp((state) => state.view.started)
  const store = useAppStore()
  const { documents } = useServices()
  const startNew = useCallback(() => {
    void documents.start({ design: bareDesign(store.getState().workshop), workshop: store.getState().workshop })
  }, [documents, store])
  const tell = useCallback((text: string) => store.do.look({ notice: { text } }), [store])
  useShortcuts(startNew)
  useDroppedFile(documents.take, tell)
  const Room = ROOMS[screen]
  return (
    <div className="frame">
      <TopBar />
      <Rail />
      <main className="room" aria-label={SCREEN_NAMES[screen].name}>
        {screen === 'board' && !started ? (
          <StartScreen />
        ) : (
          <KeepsStanding key={screen}>
            <Suspense fallback={<p className="page quiet">Opening…</p>}>
              <Room />
            </Suspense>
          </KeepsStanding>
        )}
      </main>
      <FindingsStrip />
      <Notice />
      <Said />
      <AskDialog />
    </div>
  )
}
