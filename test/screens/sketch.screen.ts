import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { channelsListed, chooseListed, openDemo, startBare, typeIn } from './acts'
import { press, tabTo, type } from './by-keys'
import { dragTo, drawChannel, onBoard, release, shownMm } from './by-mouse'
import { saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()

const BUILT = [
  { lengthMm: 1388, sites: 9 },
  { lengthMm: 455, sites: 3 }
]

const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true })
const redo = (page: Page) => page.getByRole('button', { name: 'Redo', exact: true })
const site = (page: Page, place: number) =>
  page
    .getByRole('region', { name: 'Channels and sites' })
    .getByRole('button', { name: new RegExp(`^Site ${place}\\b`) })

async function undoAllAndBack(page: Page, act: (what: 'undo' | 'redo') => Promise<void>): Promise<void> {
  const drawn = await channelsListed(page)
  while (await undo(page).isEnabled()) await act('undo')
  await page.getByText('None yet.').waitFor()
  while (await redo(page).isEnabled()) await act('redo')
  expect(await channelsListed(page)).toEqual(drawn)
}

const built = async (page: Page) =>
  (await saveDesign(page)).design.channels.map(({ lengthMm, sites }) => ({ lengthMm, sites: sites.length }))

test('choosing another channel or site leaves the board where it is', async () => {
  const { page } = await bench.open()
  await openDemo(page, DEMOS[0]?.name ?? '')
  const box = () => page.getByRole('application').boundingBox()
  const before = await box()
  for (const place of [1, 2, 3]) {
    await chooseListed(page, place)
    expect(await box()).toEqual(before)
    await site(page, 1).click()
    expect(await box()).toEqual(before)
  }
})

test('two channels are drawn on a bare sill with the mouse, a site dragged, an end pulled, all undone and done again', async () => {
  const { page, complaints } = await bench.open()
  await startBare(page)
  await typeIn(page.getByLabel('Length along the sill', { exact: true }).last(), '1400')
  await typeIn(page.getByLabel('Depth, front to glass', { exact: true }).last(), '28 cm')

  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.2, 0.6), await onBoard(page, 0.45, 0.6))

  const before = await shownMm(page, 'Cut length')
  const far = sighted.place(
    (await shownMm(page, 'Datum end from the left')) + before,
    await shownMm(page, 'Centre from the front')
  )
  await dragTo(page, far, { x: far.x + 60, y: far.y })
  const live = page.getByRole('status', { name: 'Figure while dragging' })
  expect(
    Math.abs(Number.parseFloat((await live.locator('strong').textContent()) ?? '') - before - 60 / sighted.pxPerMm)
  ).toBeLessThan(3)
  await page.keyboard.type('455')
  await page.keyboard.press('Enter')
  await release(page)
  expect(await shownMm(page, 'Cut length')).toBe(455)
  await typeIn(page.getByLabel('Spacing', { exact: true }), '140')
  await page.getByRole('button', { name: 'Put in by spacing' }).click()

  await chooseListed(page, 1)
  await typeIn(page.getByLabel('Spacing', { exact: true }), '150')
  await page.getByRole('button', { name: 'Put in by spacing' }).click()
  const x = await shownMm(page, 'Datum end from the left')
  const y = await shownMm(page, 'Centre from the front')
  await site(page, 2).click()
  const at = await shownMm(page, 'From the datum end')
  const hole = sighted.place(x + at, y)
  await dragTo(page, hole, { x: hole.x + 12, y: hole.y + 5 })
  await release(page)
  const moved = await shownMm(page, 'From the datum end')
  expect(Math.abs(moved - at - 12 / sighted.pxPerMm)).toBeLessThan(2)

  await undoAllAndBack(page, (what) => (what === 'undo' ? undo(page) : redo(page)).click())
  expect(await built(page)).toEqual(BUILT)
  expect(complaints).toEqual([])
})

test('the same two channels are drawn with the keyboard alone', async () => {
  const { page, complaints } = await bench.open()
  const board = page.getByRole('application')
  await press(page, page.getByRole('button', { name: 'Start with the bare sill' }))
  await type(page, page.getByLabel('Length along the sill', { exact: true }).last(), '1400')
  await type(page, page.getByLabel('Depth, front to glass', { exact: true }).last(), '28 cm')

  await press(page, page.getByRole('button', { name: 'Add a channel' }))
  await press(page, page.getByRole('button', { name: 'Add a channel' }))
  await type(page, page.getByLabel('Cut length', { exact: true }), '455')
  await type(page, page.getByLabel('Spacing', { exact: true }), '140')
  await press(page, page.getByRole('button', { name: 'Put in by spacing' }))

  await tabTo(page, board)
  await page.keyboard.press('Escape')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await type(page, page.getByLabel('Spacing', { exact: true }), '150')
  await press(page, page.getByRole('button', { name: 'Put in by spacing' }))

  await tabTo(page, board)
  for (const key of ['Escape', 'Tab', 'Tab', 'Tab']) await page.keyboard.press(key)
  const at = await shownMm(page, 'From the datum end')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await expect.poll(() => shownMm(page, 'From the datum end')).toBe(at + 11)
  await expect.poll(() => page.locator('#said').textContent()).toContain(`${at + 11} mm from the datum end`)

  await undoAllAndBack(page, (what) => page.keyboard.press(what === 'undo' ? 'Control+z' : 'Control+Shift+z'))
  expect(await built(page)).toEqual(BUILT)
  expect(complaints).toEqual([])
})
