import type { Page } from 'playwright-core'

export interface OnPage {
  readonly x: number
  readonly y: number
}

const board = (page: Page) => page.getByRole('application')

/** A place on the board by shares of its width and height. */
export async function onBoard(page: Page, across: number, down: number): Promise<OnPage> {
  const box = await board(page).boundingBox()
  if (box === null) throw new Error('there is no board to point at')
  return { x: Math.round(box.x + box.width * across), y: Math.round(box.y + box.height * down) }
}

/** Presses at one place, moves in steps as a hand does, and holds; `release` lets go. */
export async function dragTo(page: Page, from: OnPage, to: OnPage): Promise<void> {
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(to.x, to.y, { steps: 6 })
}

export const release = (page: Page): Promise<void> => page.mouse.up()

/** Millimetres on the sill to the page, found by what a drawn channel came to. */
export interface Sighted {
  readonly pxPerMm: number
  readonly place: (xMm: number, yMm: number) => OnPage
}

/** A figure of the strip that is shown in millimetres. */
export const shownMm = async (page: Page, label: string): Promise<number> =>
  Number.parseFloat(await page.getByLabel(label, { exact: true }).inputValue())

/** Draws a channel from one place to another with the mouse, and takes from its figures how the board is scaled. */
export async function drawChannel(page: Page, from: OnPage, to: OnPage): Promise<Sighted> {
  await page.getByRole('button', { name: 'Draw a channel' }).click()
  await dragTo(page, from, to)
  await release(page)
  const pxPerMm = (to.x - from.x) / (await shownMm(page, 'Cut length'))
  const left = from.x - (await shownMm(page, 'Datum end from the left')) * pxPerMm
  const front = from.y + (await shownMm(page, 'Centre from the front')) * pxPerMm
  return { pxPerMm, place: (xMm, yMm) => ({ x: left + xMm * pxPerMm, y: front - yMm * pxPerMm }) }
}
