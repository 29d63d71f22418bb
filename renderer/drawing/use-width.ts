import { type RefObject, useEffect, useRef, useState } from 'react'

/** How wide an element is shown, so that a drawing keeps its pens and letters at their size. */
export function useWidth<T extends Element>(): { readonly ref: RefObject<T | null>; readonly width: number } {
  const ref = useRef<T>(null)
  const [width, setWidth] = useState(0)
  useEffect(() => {
    const element = ref.current
    if (element === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setWidth(Math.floor(entry.contentRect.width))
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return { ref, width }
}
