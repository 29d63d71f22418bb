import { useCallback, useEffect } from 'react'
import { usePlanStore } from '../plan/use-plan'
import { useAppStore } from '../store/use-app'
import { boardStore } from './board-store'
import { fitted, joined, MARGIN_PX, sameScale } from './scale'

/** A low picture keeps most of its height for the sill. */
const MOST_MARGIN = 0.2

/** Fits the sill, or what is chosen, to the window; also when a new document comes. */
export function useFit(): (chosenOnly?: boolean) => void {
  const store = useAppStore()
  const planStore = usePlanStore()
  const fitSill = useCallback(
    (chosenOnly = false) => {
      const { size } = boardStore.getState()
      if (size.width === 0) return
      const plan = planStore.getState().live
      const { selection } = store.getState()
      const outlines = plan.channels
        .filter((channel) => !chosenOnly || selection.channelIds.includes(channel.channelId))
        .map((channel) => channel.layout.outline)
      const sill = { xMm: 0, yMm: 0, lengthMm: plan.sill.lengthMm, depthMm: plan.sill.depthMm }
      const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1
      const extent = joined(chosenOnly && outlines.length > 0 ? outlines : [sill, ...outlines]) ?? sill
      const scale = fitted(extent, size, Math.min(MARGIN_PX * letters, MOST_MARGIN * size.height))
      boardStore.setState((now) => ({ scale: sameScale(now.scale, scale) ? now.scale : scale, placed: chosenOnly }))
    },
    [store, planStore]
  )
  useEffect(() => {
    const whole = (): void => fitSill()
    window.addEventListener('board-fit', whole)
    const stop = store.subscribe((state, before) => {
      if (state.design.id !== before.design.id) requestAnimationFrame(whole)
    })
    return () => {
      window.removeEventListener('board-fit', whole)
      stop()
    }
  }, [fitSill, store])
  return fitSill
}
