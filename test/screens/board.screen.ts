import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { channelsListed, chooseListed, openDemo, startBare, typeIn } from './acts'
import { press } from './by-keys'
import { onBoard } from './by-mouse'
import { saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const name = DEMOS[0]?.name ?? ''

const scale = (page: Page) => page.locator('.board-scale').textContent()
const tool = (page: Page, label: string) => page.getByRole('toolbar').getByRole('button', { name: label, exact: true })
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true })

async function wheel(page: Page, notches: number, deltaY: number): Promise<void> {
  const { x, y } = await onBoard(page, 0.5, 0.5)
  await page.mouse.move(x, y)
  for (let notch = 0; notch < notches; notch += 1) await page.mouse.wheel(0, deltaY)
}

test('the board zooms at the pointer from 1:20 to 4:1, fits the sill, and zooms to what is chosen', async () => {
  const { page } = await bench.open()
  await openDemo(page, name)
  const fitted = await scale(page)
  await wheel(page, 30, -600)
  await expect.poll(() => scale(page)).toBe('4:1')
  await wheel(page, 40, 600)
  await expect.poll(() => scale(page)).toBe('1:20')
  await page.getByRole('application').focus()
  await page.keyboard.press('0')
  await expect.poll(() => scale(page)).toBe(fitted)
  await chooseListed(page, 1)
  await tool(page, 'Zoom to what is chosen').click()
  await expect.poll(() => scale(page)).not.toBe(fitted)
})

test('several channels are chosen and a field of all changed in one step; sites are matched and staggered; copy, mirror and turn undo one by one', async () => {
  const { page, complaints } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  await typeIn(page.getByLabel('Cut length', { exact: true }), '700')
  await typeIn(page.getByLabel('Spacing', { exact: true }), '150')
  await page.getByRole('button', { name: 'Put in by spacing' }).click()
  await page.getByRole('button', { name: 'Add a channel' }).click()
  await typeIn(page.getByLabel('Cut length', { exact: true }), '600')
  await page.getByRole('application').focus()
  await page.keyboard.press('Control+a')
  await page.getByRole('button', { name: 'Sites as in the first' }).click()
  const matched = (await saveDesign(page)).design.channels.map((each) => each.sites.map((site) => site.atMm))
  // 600 is shorter than 700: the last place has no room there.
  expect(matched[1]).toEqual(matched[0]?.slice(0, -1))
  expect(matched[1]?.length).toBeGreaterThan(1)
  await page.getByRole('button', { name: 'Stagger against the first' }).click()
  const staggered = (await saveDesign(page)).design.channels.map((each) => each.sites.map((site) => site.atMm))
  expect(staggered[1]?.some((at) => !staggered[0]?.includes(at))).toBe(true)
  await typeIn(page.getByLabel('Cut length of all'), '800')
  expect((await saveDesign(page)).design.channels.map((each) => each.lengthMm)).toEqual([800, 800])
  await undo(page).click()
  expect((await saveDesign(page)).design.channels.map((each) => each.lengthMm)).toEqual([700, 600])

  const before = (await saveDesign(page)).design
  for (const label of ['Copy', 'Mirror', 'Turn']) await tool(page, label).click()
  expect((await channelsListed(page)).length).toBe(4)
  for (let step = 0; step < 3; step += 1) await undo(page).click()
  expect((await saveDesign(page)).design).toEqual(before)
  expect(complaints).toEqual([])
})

test('a locked site stays when the others are spread evenly', async () => {
  const { page } = await bench.open()
  await startBare(page)
  await page.getByRole('button', { name: 'Add a channel' }).click()
  await typeIn(page.getByLabel('How many', { exact: true }), '5')
  await page.getByRole('button', { name: 'Put in by count' }).click()
  const sites = page.getByRole('region', { name: 'Channels and sites' }).getByRole('button', { name: /^Site 2\b/ })
  await sites.click()
  await typeIn(page.getByLabel('From the datum end', { exact: true }), '333')
  await page.getByLabel('Locked in place').check()
  await chooseListed(page, 1)
  await page.getByRole('button', { name: 'Spread evenly' }).click()
  const [channel] = (await saveDesign(page)).design.channels
  expect(channel?.sites.find((each) => each.locked)?.atMm).toBe(333)
  expect(channel?.sites).toHaveLength(5)
})

test('the board is copied as a picture, and saved as PNG and as SVG, from the menu and by keys', async () => {
  const { page, context, complaints } = await bench.open()
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openDemo(page, name)
  const file = page.getByRole('button', { name: 'File', exact: true })
  await file.click()
  await page.getByRole('button', { name: 'Copy the board as a picture' }).click()
  await page.getByText('The board is on the clipboard as a picture.').waitFor()
  const types = await page.evaluate(async () => (await navigator.clipboard.read()).flatMap((item) => item.types))
  expect(types).toEqual(['image/png'])

  const saved = async (label: string): Promise<Buffer> => {
    await press(page, file)
    const waiting = page.waitForEvent('download')
    await press(page, page.getByRole('button', { name: label }))
    return readFile(await (await waiting).path())
  }
  const png = await saved('Save the board as PNG…')
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG')
  // Width in the header of a PNG (ISO/IEC 15948, IHDR): three dots to the pixel of the board.
  const box = await page.getByRole('application').boundingBox()
  expect(png.readUInt32BE(16)).toBe(3 * Math.floor(box?.width ?? 0))
  expect((await saved('Save the sill as SVG, to scale…')).toString('utf8')).toMatch(/^<svg[\s\S]*<\/svg>\s*$/)
  expect(complaints).toEqual([])
})

test('three short steps, drawn before they are taken, lead to a design without a stop; a demo is one click away', async () => {
  const { page } = await bench.open()
  await typeIn(page.getByLabel('Length along the window'), '1200')
  await typeIn(page.getByLabel('Depth from the front edge to the glass'), '220')
  const promised = page.locator('.first-picture')
  await promised.getByText('1190 mm').waitFor()
  const holes = await promised.locator('circle').count()
  await page.getByRole('button', { name: 'Draw it' }).click()
  await page.getByRole('application').waitFor()
  expect(await page.getByRole('region', { name: 'Findings', exact: true }).getByText('0 stop').count()).toBe(1)
  const [channel] = (await saveDesign(page)).design.channels
  expect(channel?.lengthMm).toBe(1190)
  expect(channel?.sites).toHaveLength(holes)
  expect(holes).toBeGreaterThan(1)
})

test('what fits the sill is shown as pictures; one click takes a layout without a stop, undo brings the old one back', async () => {
  const { page } = await bench.open()
  await openDemo(page, name)
  const before = (await saveDesign(page)).design
  await page.getByRole('button', { name: 'What fits?' }).click()
  await page.getByRole('button', { name: 'Show what fits' }).click()
  await page.getByText(/Every layout was tried|The search was ended early/).waitFor()
  await page
    .getByRole('button', { name: /^Take this one/ })
    .first()
    .click()
  expect(await page.getByRole('region', { name: 'Findings', exact: true }).getByText('0 stop').count()).toBe(1)
  expect((await saveDesign(page)).design.channels).not.toEqual(before.channels)
  await undo(page).click()
  expect((await saveDesign(page)).design).toEqual(before)
})

test('every button and field of the board is a target of at least 24 px, and the key names its marks', async () => {
  const { page } = await bench.open()
  await openDemo(page, name)
  await chooseListed(page, 1)
  await page.getByText('Key', { exact: true }).click()
  await page.getByText('Service opening: fill port, drain, level sight').waitFor()
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('main :is(button, input:not([type=checkbox]), select, summary)')].flatMap((each) => {
      const { width, height } = each.getBoundingClientRect()
      return width > 0 && (width < 24 || height < 24) ? [`${each.textContent} ${width} × ${height}`] : []
    })
  )
  expect(small).toEqual([])
})
