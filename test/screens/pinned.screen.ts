import { expect, test } from 'vitest'
import { chooseListed, startBare } from './acts'
import { dragTo, drawChannel, onBoard, release, shownMm } from './by-mouse'
import { saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()

test('a dimension clicked between two things stays, its line is dragged, nudged and typed, and it is taken away by key', async () => {
  const { page, complaints } = await bench.open()
  await startBare(page)
  // The strip takes its room once there is a channel: places are measured after that.
  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.3, 0.65), await onBoard(page, 0.6, 0.65))
  const [x, y, length] = [
    await shownMm(page, 'Datum end from the left'),
    await shownMm(page, 'Centre from the front'),
    await shownMm(page, 'Cut length')
  ]
  await page.getByRole('button', { name: 'Pin a dimension' }).click()
  for (const at of [sighted.place(x, y), sighted.place(x + length, y)]) await page.mouse.click(at.x, at.y)
  const listed = page.getByRole('list', { name: 'Pinned to the sill' }).getByRole('button')
  expect(await listed.allTextContents()).toEqual(['Channel 2, datum end to Channel 2, far end'])
  expect(await page.getByText(`far end: ${length} mm`).count()).toBe(1)

  // 24 px below the channel's middle is where the first dimension line stands.
  const middle = sighted.place(x + length / 2, y)
  await dragTo(page, { x: middle.x, y: middle.y + 24 }, { x: middle.x, y: middle.y + 74 })
  expect(await page.getByRole('status', { name: 'Figure while dragging' }).textContent()).toContain('Line')
  await release(page)
  const dragged = (await saveDesign(page)).design.dimensions[0]?.offMm ?? 0
  expect(Math.abs(dragged - 74 / sighted.pxPerMm)).toBeLessThan(2)

  await page.getByRole('application').focus()
  await page.keyboard.press('ArrowDown')
  const nudged = (await saveDesign(page)).design.dimensions[0]?.offMm ?? 0
  expect(nudged).toBeGreaterThan(dragged)
  await page.getByLabel('Line, from what it measures').fill('40')
  await page.getByLabel('Line, from what it measures').press('Enter')
  expect((await saveDesign(page)).design.dimensions[0]?.offMm).toBe(40)

  await page.getByRole('application').focus()
  await page.keyboard.press('Delete')
  expect(await listed.count()).toBe(0)
  await page.keyboard.press('Control+z')
  expect(await listed.count()).toBe(1)
  expect(complaints).toEqual([])
})

test('a dimension begun on a channel that is then taken away is given up, by key or with its tool', async () => {
  const { page, complaints } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.3, 0.65), await onBoard(page, 0.6, 0.65))
  const [x, y] = [await shownMm(page, 'Datum end from the left'), await shownMm(page, 'Centre from the front')]
  const [begun, pin] = [sighted.place(x, y), page.getByRole('button', { name: 'Pin a dimension' })]
  await chooseListed(page, 1)
  const other = sighted.place(
    await shownMm(page, 'Datum end from the left'),
    await shownMm(page, 'Centre from the front')
  )
  const takenAway = async (layDown: boolean): Promise<void> => {
    await pin.click()
    await page.mouse.click(begun.x, begun.y)
    if (layDown) await page.getByRole('button', { name: 'Choose', exact: true }).click()
    await chooseListed(page, 2)
    await page.getByRole('application').focus()
    await page.keyboard.press('Delete')
    if (layDown) await pin.click()
    await page.mouse.click(other.x, other.y)
    expect((await saveDesign(page)).design.dimensions).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Control+z')
  }
  await takenAway(false)
  await takenAway(true)
  expect(complaints).toEqual([])
})

test('a note pinned to a place is typed, dragged and reached by Tab after the channels', async () => {
  const { page, complaints } = await bench.open()
  await startBare(page)
  // The strip takes its room once there is a channel: places are measured after that.
  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.3, 0.75), await onBoard(page, 0.6, 0.75))
  const spot = sighted.place(200, 40)
  await page.getByRole('button', { name: 'Pin a note' }).first().click()
  await page.mouse.click(spot.x, spot.y)
  const words = page.getByLabel('Note', { exact: true })
  await expect.poll(() => words.evaluate((field) => field === document.activeElement)).toBe(true)
  await page.keyboard.type('Tap side')
  await page.keyboard.press('Enter')
  await dragTo(page, spot, { x: spot.x + 60, y: spot.y - 20 })
  await release(page)
  const [note] = (await saveDesign(page)).design.notes
  expect(note?.text).toBe('Tap side')
  expect(Math.abs((note?.xMm ?? 0) - 200 - 60 / sighted.pxPerMm)).toBeLessThan(3)

  await chooseListed(page, 2)
  await page.getByRole('application').focus()
  await page.keyboard.press('Tab')
  await expect.poll(() => page.locator('#said').textContent()).toBe('Note: Tap side')
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => page.locator('#said').textContent()).toMatch(/^Note .* from the left/)
  expect(complaints).toEqual([])
})
