import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { chooseListed, openDemo, planSettled, startBare, typeIn } from './acts'
import { dragTo, drawChannel, onBoard, release, shownMm } from './by-mouse'
import { saveDesign } from './design-files'
import { accessibilityFindings, benchForTests } from './page'

const bench = benchForTests()
const name = DEMOS[0]?.name ?? ''

const tool = (page: Page, label: string) => page.getByRole('toolbar').getByRole('button', { name: label, exact: true })

test('a dragged channel is drawn to the sill’s middle; with Alt held it stays where the hand leaves it', async () => {
  const { page } = await bench.open()
  await startBare(page)
  // The strip takes its room once there is a channel: places are measured after that.
  await page.getByRole('button', { name: 'Add a channel' }).click()
  const sighted = await drawChannel(page, await onBoard(page, 0.2, 0.75), await onBoard(page, 0.45, 0.75))
  const [length, y] = [await shownMm(page, 'Cut length'), await shownMm(page, 'Centre from the front')]
  const sill = (await saveDesign(page)).design.sill
  const middle = Math.min(...sill.lengthsMm) / 2
  const closures = 4
  const dragMiddleTo = async (wantedMm: number, held = false): Promise<number> => {
    const from = sighted.place((await shownMm(page, 'Datum end from the left')) + length / 2, y)
    const by = (wantedMm - (await shownMm(page, 'Datum end from the left')) - length / 2) * sighted.pxPerMm
    if (held) await page.keyboard.down('Alt')
    await dragTo(page, from, { x: from.x + by, y: from.y })
    await release(page)
    if (held) await page.keyboard.up('Alt')
    return (await saveDesign(page)).design.channels[1]?.xMm ?? 0
  }
  const snapped = await dragMiddleTo(middle + 4)
  expect(Math.abs(snapped + length / 2 - middle)).toBeLessThan(0.51)
  await dragMiddleTo(middle + 60, true)
  const free = await dragMiddleTo(middle + closures, true)
  expect(Math.abs(free + length / 2 - middle - closures)).toBeLessThan(1.5)
  expect(Math.abs(free + length / 2 - middle)).toBeGreaterThan(1.5)
})

test('a finding on the board is a button that goes to the field which clears it', async () => {
  const { page } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  await typeIn(page.getByLabel('Cut length', { exact: true }), '9 m')
  await tool(page, 'Fit the sill').click()
  await page.getByRole('region', { name: 'Findings on the board' }).getByRole('button').first().click()
  await expect.poll(() => page.evaluate(() => document.activeElement?.closest('.board-strip') !== null)).toBe(true)
})

test('axe-core finds nothing on the board under forced colours, nor with its letters at 200 %, where the board stays in sight', async () => {
  const forced = await bench.open({ forcedColours: true })
  await openDemo(forced.page, name)
  await planSettled(forced.page)
  expect(await accessibilityFindings(forced.page)).toEqual([])
  const large = await bench.open({ width: 1280, height: 720 })
  const session = await large.context.newCDPSession(large.page)
  await session.send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } })
  // As a reader finds it whose letters were large before: the browser does not always lay an open page out anew for it.
  await large.page.reload()
  await openDemo(large.page, name)
  await chooseListed(large.page, 1)
  // The strip's list was reached for below the board, and the board is still whole in sight, as wide as its room.
  const inSight = await large.page.evaluate(() => {
    const room = document.querySelector('main')?.getBoundingClientRect()
    const board = document.querySelector('.board-surface')?.getBoundingClientRect()
    if (room === undefined || board === undefined) return null
    return board.top >= room.top - 1 && board.bottom <= room.bottom + 1 && board.width >= 0.95 * room.width
  })
  expect(inSight).toBe(true)
  expect(await accessibilityFindings(large.page)).toEqual([])
})
