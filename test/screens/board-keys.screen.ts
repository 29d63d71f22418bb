import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { channelsListed, chooseListed, openDemo, startBare, typeIn } from './acts'
import { tabTo } from './by-keys'
import { dragTo, drawChannel, onBoard, release, shownMm } from './by-mouse'
import { saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const name = DEMOS[0]?.name ?? ''

const tool = (page: Page, label: string) => page.getByRole('toolbar').getByRole('button', { name: label, exact: true })
const channels = async (page: Page) => (await saveDesign(page)).design.channels

test('Tab walks the objects with a ring drawn around each and its name in a polite live region; arrows nudge by the graduation, ten of it with Shift', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, name)
  const board = page.getByRole('application')
  await tabTo(page, board)
  await page.keyboard.press('Escape')
  const said = page.locator('#said')
  expect(await said.getAttribute('aria-live')).toBe('polite')
  const seen = new Set<string>()
  const pictures = new Set<string>([(await board.screenshot()).toString('base64')])
  for (let stop = 0; stop < 3; stop += 1) {
    await page.keyboard.press('Tab')
    await expect.poll(async () => seen.has((await said.textContent()) ?? '')).toBe(false)
    seen.add((await said.textContent()) ?? '')
    pictures.add((await board.screenshot()).toString('base64'))
  }
  expect(pictures.size).toBe(4)
  await chooseListed(page, 3)
  await board.focus()
  const before = await shownMm(page, 'Datum end from the left')
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => shownMm(page, 'Datum end from the left')).toBe(before + 1)
  await page.keyboard.press('Shift+ArrowRight')
  await expect.poll(() => shownMm(page, 'Datum end from the left')).toBe(before + 11)
  expect(complaints).toEqual([])
})

test('a number typed during a drag sets the length exactly, and Escape gives the drag up', async () => {
  const { page } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.2, 0.75), await onBoard(page, 0.45, 0.75))
  const far = async () =>
    sighted.place(
      (await shownMm(page, 'Datum end from the left')) + (await shownMm(page, 'Cut length')),
      await shownMm(page, 'Centre from the front')
    )
  const end = await far()
  await dragTo(page, end, { x: end.x + 40, y: end.y })
  await page.keyboard.type('523')
  await page.keyboard.press('Enter')
  await release(page)
  expect((await channels(page)).at(-1)?.lengthMm).toBe(523)
  const again = await far()
  await dragTo(page, again, { x: again.x + 40, y: again.y })
  await page.keyboard.press('Escape')
  await release(page)
  expect((await channels(page)).at(-1)?.lengthMm).toBe(523)
})

test('a channel is copied, mirrored, turned and deleted by its buttons, and each is one step back', async () => {
  const { page } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  await typeIn(page.getByLabel('Cut length', { exact: true }), '180')
  const states = [await channels(page)]
  for (const label of ['Copy', 'Mirror', 'Turn', 'Delete']) {
    await tool(page, label).click()
    states.push(await channels(page))
  }
  expect(states.map((each) => each.length)).toEqual([1, 2, 2, 2, 1])
  expect(new Set(states.map((each) => JSON.stringify(each))).size).toBeGreaterThan(3)
  for (const before of states.slice(0, -1).reverse()) {
    await page.getByRole('button', { name: 'Undo', exact: true }).click()
    expect(await channels(page)).toEqual(before)
  }
  expect(await channelsListed(page)).toHaveLength(1)
})
