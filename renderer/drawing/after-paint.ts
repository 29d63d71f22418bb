/**
 * Does something once so many frames have been painted; gives how to call it off. A window that is not in sight paints
 * none: there it is done at once.
 */
export function afterPaint(act: () => void, frames = 1): () => void {
  let frame = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  const next = (left: number): void => {
    if (left === 0) act()
    else if (document.hidden) timer = setTimeout(act)
    else
      frame = requestAnimationFrame(() => {
        timer = setTimeout(() => next(left - 1))
      })
  }
  next(frames)
  return () => {
    cancelAnimationFrame(frame)
    clearTimeout(timer)
  }
}

/** Does something once the window has nothing else to do, within two seconds; gives how to call it off. */
export function whenIdle(act: () => void): () => void {
  if (window.requestIdleCallback === undefined) return afterPaint(act)
  const asked = requestIdleCallback(act, { timeout: 2_000 })
  return () => cancelIdleCallback(asked)
}
