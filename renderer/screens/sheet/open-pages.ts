import { GlobalWorkerOptions, getDocument, type PageViewport, type PDFPageProxy } from 'pdfjs-dist'
import workerAddress from 'pdfjs-dist/build/pdf.worker.mjs?url'

export interface Pages {
  readonly count: number
  readonly numbers: readonly number[]
  /** Draws a page to a width in CSS pixels. */
  readonly draw: (number: number, canvas: HTMLCanvasElement, widthPx: number) => Promise<void>
  /** Width ÷ height of a page, to keep its place before it is drawn. */
  readonly shape: (number: number) => Promise<number>
  readonly close: () => void
}

GlobalWorkerOptions.workerSrc = workerAddress

/** Opens a PDF's bytes to be shown; a copy is taken, because the reader keeps what it is given. */
export async function openPages(pdf: Uint8Array): Promise<Pages> {
  const task = getDocument({ data: pdf.slice(), isEvalSupported: false })
  const file = await task.promise
  const at = async (number: number, widthPx: number): Promise<{ page: PDFPageProxy; viewport: PageViewport }> => {
    const page = await file.getPage(number)
    const natural = page.getViewport({ scale: 1 })
    return { page, viewport: page.getViewport({ scale: widthPx / natural.width }) }
  }
  return {
    count: file.numPages,
    numbers: Array.from({ length: file.numPages }, (_, index) => index + 1),
    shape: async (number) => {
      const { viewport } = await at(number, 100)
      return viewport.width / viewport.height
    },
    draw: async (number, canvas, widthPx) => {
      const { page, viewport } = await at(number, widthPx * window.devicePixelRatio)
      canvas.width = Math.round(viewport.width)
      canvas.height = Math.round(viewport.height)
      await page.render({ canvas, viewport }).promise
    },
    close: () => void task.destroy()
  }
}
