import type { Locator, Page } from 'playwright-core'

/** The rooms of the job as the rail names them. */
export const ROOMS = ['Board', 'Cuts', 'Drilling & steps', 'Materials', 'Price', 'Build sheet', 'Workshop'] as const
export type Room = (typeof ROOMS)[number]

/** Opens a room of the job by its button at the side and waits for its heading. */
export async function openRoom(page: Page, room: Room): Promise<void> {
  await page.getByRole('navigation', { name: 'Rooms of the job' }).getByRole('button', { name: room }).click()
  const main = page.getByRole('main', { name: room })
  await (room === 'Board'
    ? main.getByRole('application')
    : main.getByRole('heading', { level: 1, name: room, exact: true })
  ).waitFor()
}

/** Opens a finished design from the first screen. */
export async function openDemo(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: `Open ${name}`, exact: true }).click()
  await boardReady(page)
}

/** An empty sill to draw on, from the first screen. */
export async function startBare(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start with the bare sill' }).click()
  await boardReady(page)
}

/** Waits for the board and for the list beside it, which comes after the board's first picture. */
async function boardReady(page: Page): Promise<void> {
  await page.getByRole('application').waitFor()
  await page.getByRole('region', { name: 'Channels and sites' }).waitFor()
}

/** Waits until the bars are worked out and nothing shown is from before the last change. */
export async function planSettled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const totals = document.querySelector('[aria-label="Totals"]')
    return totals !== null && !(totals.textContent ?? '…').includes('…') && totals.querySelector('.stale') === null
  })
}

/** Waits until the first page of the build sheet is drawn from the written file. */
export async function sheetDrawn(page: Page): Promise<void> {
  await page.locator('canvas[data-drawn="true"]').first().waitFor()
}

/** Names and values of a list of figures. */
export async function figuresIn(list: Locator): Promise<Readonly<Record<string, string>>> {
  const names = await list.locator('dt').allTextContents()
  const values = await list.locator('dd:not(.small)').allTextContents()
  return Object.fromEntries(names.map((name, index) => [name, values[index] ?? '']))
}

/** The figures at the foot of the window. */
export const totals = (page: Page): Promise<Readonly<Record<string, string>>> => figuresIn(page.getByLabel('Totals'))

/** Types a figure over what stands in a field, then Enter. */
export async function typeIn(field: Locator, text: string): Promise<void> {
  await field.click()
  await field.fill(text)
  await field.press('Enter')
}

/** The list of channels beside the board: name, cut length and count of sites as written there. */
export async function channelsListed(page: Page): Promise<readonly string[]> {
  return page
    .getByRole('region', { name: 'Channels and sites' })
    .getByRole('button', { name: /\d sites?$/ })
    .allInnerTexts()
    .then((texts) => texts.map((text) => text.replace(/\s+/g, ' ').trim()))
}

/** Chooses a channel in the list beside the board by its place there, from 1. */
export async function chooseListed(page: Page, place: number): Promise<void> {
  await page
    .getByRole('region', { name: 'Channels and sites' })
    .getByRole('button', { name: /\d sites?$/ })
    .nth(place - 1)
    .click()
}
