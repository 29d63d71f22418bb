import { type RefObject, useEffect, useRef, useState } from 'react'

export interface ShownSize {
  readonly width: number
  readonly height: number
  /** How many times the usual text size the reader has set. */
  readonly letters: number
}

/** How large an element is shown, and how large letters are, so that a drawing fills it and its words do not run over. */
export function useSize<T extends Element>(): { readonly ref: RefObject<T | null>; readonly size: ShownSize } {
  const ref = useRef<T>(null)
  const [size, setSize] = useState<ShownSize>({ width: 0, height: 0, letters: 1 })
  useEffect(() => {
    const element = ref.current
    if (element === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1
      const { width, height } = entry.contentRect
      setSize({ width: Math.floor(width), height: Math.floor(height), letters })
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return { ref, size }
}
