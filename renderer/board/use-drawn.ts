import { startTransition, useEffect, useState } from 'react'
import { boardStore } from './board-store'

/** Whether the board's first picture stands on the window. What comes after it is made bit by bit and holds no hand up. */
export function useDrawn(): boolean {
  const [drawn, setDrawn] = useState(() => boardStore.getState().drawn)
  useEffect(() => {
    const look = (): void => {
      if (boardStore.getState().drawn) startTransition(() => setDrawn(true))
    }
    look()
    return boardStore.subscribe(look)
  }, [])
  return drawn
}
