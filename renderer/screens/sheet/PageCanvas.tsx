import { useEffect, useRef, useState } from 'react'
import type { Pages } from './open-pages'

/** Before a page's own shape is known. */
const A4_SHAPE = 210 / 297

/** One page, drawn when it comes into sight. */
export function PageCanvas({ pages, number }: { readonly pages: Pages; readonly number: number }) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const [shape, setShape] = useState(A4_SHAPE)
  const [drawn, setDrawn] = useState(false)
  useEffect(() => {
    let mine = true
    void pages.shape(number).then((found) => {
      if (mine) setShape(found)
    })
    return () => {
      mine = false
    }
  }, [pages, number])
  useEffect(() => {
    const element = canvas.current
    if (element === null) return
    const watch = new IntersectionObserver(([entry]) => {
      if (entry?.isIntersecting !== true) return
      watch.disconnect()
      pages.draw(number, element, element.clientWidth).then(
        () => setDrawn(true),
        () => setDrawn(false)
      )
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [pages, number])
  return (
    <canvas
      ref={canvas}
      className="page-canvas"
      style={{ aspectRatio: `${shape}` }}
      role="img"
      aria-label={`Page ${number} of ${pages.count}`}
      data-drawn={drawn}
    />
  )
}
