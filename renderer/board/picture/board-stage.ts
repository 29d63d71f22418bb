import type Konva from 'konva'
import { createRef } from 'react'

/** The board as it is drawn now; null while it is not shown. */
export const boardStage = createRef<Konva.Stage>()

/** Finer than the screen, so that a printed picture is not coarse. */
const FINE = 3

/** What the board shows, as a picture of dots. */
export async function boardPng(): Promise<Blob | null> {
  const stage = boardStage.current
  if (stage === null) return null
  const canvas = stage.toCanvas({ pixelRatio: FINE })
  return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'))
}
