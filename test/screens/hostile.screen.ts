import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { printDesign, printWorkshop } from '../../shared-model/design'
import { HOSTILE_DESIGN, HOSTILE_WORKSHOP, INJECTED, RAN } from '../designs/hostile'
import { openRoom, planSettled, ROOMS, sheetDrawn } from './acts'
import { openFile } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()

/** What is wrong with the page as it stands: something that ran, an element that a text brought, a page made too wide. */
const harm = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    ([injected, ran]) => [
      ...(Reflect.has(globalThis, ran ?? '') ? ['a script has run'] : []),
      ...[...document.querySelectorAll(`.${injected}, img[src="x"]`)].map((each) => `element: ${each.outerHTML}`),
      ...[document.documentElement, ...document.querySelectorAll('main')]
        .filter((each) => each.scrollWidth > each.clientWidth + 1)
        .map((each) => `${each.tagName} is ${each.scrollWidth} wide in ${each.clientWidth}`)
    ],
    [INJECTED, RAN]
  )

test('hostile texts are shown as text in every room: nothing runs, no element comes in, no page grows too wide', async () => {
  const { page, complaints } = await bench.open({ width: 1280, height: 800, policyWatch: true })
  await page.getByRole('button', { name: /^Start with the bare sill/ }).waitFor()
  await openFile(page, { name: '<b class="injected">=1.json', text: printDesign(HOSTILE_DESIGN) })
  await page.getByRole('application').waitFor()
  const found: Record<string, readonly string[]> = {}
  await openRoom(page, 'Workshop')
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('main').getByRole('button', { name: /^Open/ }).first().click()
  await (await chooser).setFiles({
    name: 'shop.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printWorkshop(HOSTILE_WORKSHOP))
  })
  await openRoom(page, 'Board')
  await planSettled(page)
  for (const room of ROOMS) {
    await openRoom(page, room)
    if (room === 'Build sheet') await sheetDrawn(page)
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('main details')) each.setAttribute('open', '')
    })
    found[room] = await harm(page)
    if (process.env.SILLWRIGHT_LOOK !== undefined)
      await page.screenshot({ path: `${process.env.SILLWRIGHT_LOOK}/${room}.png` })
  }
  expect(found).toEqual(Object.fromEntries(ROOMS.map((room) => [room, []])))
  expect(await page.getByLabel('Title of the design').inputValue()).toBe(HOSTILE_DESIGN.title)
  await openRoom(page, 'Materials')
  expect(await page.getByRole('main').innerText()).toContain('<b class="injected">bold</b>')
  expect(complaints).toEqual([])
})

test('a name of 10,000 characters is refused in words, and the page stays as it was', async () => {
  const { page, complaints } = await bench.open()
  await page.getByRole('button', { name: /^Start with the bare sill/ }).waitFor()
  const [channel, ...others] = HOSTILE_DESIGN.channels
  const long = { ...HOSTILE_DESIGN, channels: [{ ...channel, name: '<b>'.padEnd(10_000, 'W') }, ...others] }
  await openFile(page, { name: 'long.json', text: JSON.stringify(long) })
  await expect.poll(() => page.getByRole('alert').first().innerText()).toContain('10000 characters; at most 200')
  expect(await harm(page)).toEqual([])
  expect(complaints).toEqual([])
})
