import { useRef } from 'react'
import { useStore } from 'zustand'
import { boardStore } from './board-store'

/**
 * The value from before the hand began to move channels, until it lets go: what a moved channel does not change need not be
 * drawn again with every frame, and the figure beside the hand says where it is.
 */
export function useStill<T>(value: T): T {
  const moving = useStore(boardStore, ({ gesture, live }) => gesture?.kind === 'move' && live !== null)
  const kept = useRef(value)
  if (!moving) kept.current = value
  return kept.current
}
