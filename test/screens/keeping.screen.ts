import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS, printDesign, printWorkshop } from '../../shared-model/design'
import { chooseListed, openRoom, planSettled, typeIn } from './acts'
import { fileState, keptForRecovery, pickFromOrigin, pickNext, textIn } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const [demo] = DEMOS
if (demo === undefined) throw new Error('there is no demo')
const DESIGN = printDesign(demo.design)
const newer = (text: string): string => JSON.stringify({ ...JSON.parse(text), schema: 7, mood: 'new' }, null, 2)

/** A page whose file dialogs give a file of the origin's own file system, with that file opened. */
async function opened(text: string): Promise<Page> {
  const { page, context } = await bench.open({ fileDialogs: true })
  await pickFromOrigin(context)
  await page.reload()
  await pickNext(page, 'sill.design.json', text)
  await openPicked(page)
  return page
}
async function openPicked(page: Page): Promise<void> {
  await page.getByRole('heading', { name: 'What will stand on the sill?' }).waitFor()
  await page.keyboard.press('Control+o')
  await page.getByRole('application').waitFor()
}
const cutLength = (page: Page) => page.getByLabel('Cut length', { exact: true })
const notice = (page: Page): Promise<string> => page.getByRole('alert').first().innerText()
async function shorten(page: Page, length: string): Promise<void> {
  await chooseListed(page, 1)
  await typeIn(cutLength(page), length)
}

test('a design from a newer version is shown, takes no change, and is never written over', async () => {
  const page = await opened(newer(DESIGN))
  await expect.poll(() => notice(page)).toContain('written by a newer version')
  expect(await fileState(page)).toBe('For reading only: from a newer version')
  await shorten(page, '500 mm')
  await expect.poll(() => page.locator('main').innerText()).toContain('open for reading only')
  await page.keyboard.press('Escape')
  await page.getByRole('application').focus()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Delete')
  await expect.poll(() => notice(page)).toContain('open for reading only')
  await planSettled(page)
  await openRoom(page, 'Cuts')
  expect(await page.getByRole('button', { name: 'Mark as built' }).isDisabled()).toBe(true)
  // Longer than the wait before work is kept for recovery.
  await page.waitForTimeout(2_500)
  expect(await keptForRecovery(page)).toBe('')
  await page.keyboard.press('Control+s')
  await expect.poll(() => notice(page)).toContain('is not written over')
  expect(await textIn(page, 'sill.design.json')).toBe(newer(DESIGN))

  await pickNext(page, 'copy.design.json')
  await page.getByRole('button', { name: 'Save a copy to change' }).click()
  await expect.poll(() => fileState(page)).toBe('Saved in copy.design.json')
  expect(await textIn(page, 'copy.design.json')).toBe(DESIGN)
  await openRoom(page, 'Board')
  await shorten(page, '500 mm')
  await expect.poll(() => fileState(page)).toBe('Changes not saved')
})

test('a workshop from a newer version is shown and takes no change', async () => {
  const page = await opened(DESIGN)
  await openRoom(page, 'Workshop')
  await pickNext(page, 'shop.json', newer(printWorkshop({ ...demo.workshop, id: 'own' })))
  await page.getByRole('main').getByRole('button', { name: /^Open/ }).first().click()
  await expect.poll(() => notice(page)).toContain('written by a newer version')
  const add = page.getByRole('main').getByRole('button', { name: /^Add/ }).first()
  await add.click()
  await expect.poll(() => page.locator('body').innerText()).toContain('This workshop is open for reading only')
  expect(await textIn(page, 'shop.json')).toContain('"mood": "new"')
})

test('a file that is open in another tab opens as a copy, and is not saved over from there', async () => {
  const page = await opened(DESIGN)
  const second = await page.context().newPage()
  await second.goto(page.url())
  await openPicked(second)
  await expect.poll(() => notice(second)).toContain('is open in another tab. This is a copy')
  expect(await fileState(second)).toBe('Not saved to a file yet')
  await shorten(second, '500 mm')
  await second.keyboard.press('Control+s')
  await expect.poll(() => notice(second)).toContain('is open in another tab or window')
  expect(await textIn(page, 'sill.design.json')).toBe(DESIGN)
  // The tab that has the file still saves it, and when it is gone the other may.
  await shorten(page, '510 mm')
  await page.keyboard.press('Control+s')
  await expect.poll(() => fileState(page)).toBe('Saved in sill.design.json')
  await page.close()
  // The browser lets a closed tab's lock go in its own time.
  await expect
    .poll(async () => {
      await second.keyboard.press('Control+s')
      return fileState(second)
    })
    .toBe('Saved in sill.design.json')
  expect(JSON.parse(await textIn(second, 'sill.design.json')).channels[0].lengthMm).toBe(500)
})

test('a file that something else changed is asked about before it is written over', async () => {
  const page = await opened(DESIGN)
  await shorten(page, '500 mm')
  await pickNext(page, 'sill.design.json', '{"by":"something else"}')
  await page.keyboard.press('Control+s')
  const asked = page.getByRole('dialog', { name: 'Write over the changed file?' })
  await asked.getByRole('button', { name: 'Leave the file' }).click()
  expect(await textIn(page, 'sill.design.json')).toBe('{"by":"something else"}')
  await page.keyboard.press('Control+s')
  await asked.getByRole('button', { name: 'Write over it' }).click()
  await expect.poll(() => fileState(page)).toBe('Saved in sill.design.json')
  expect(JSON.parse(await textIn(page, 'sill.design.json')).channels[0].lengthMm).toBe(500)
})

test('two tabs keep unsaved work apart; what a dead tab left is offered with its time and its difference', async () => {
  const page = await opened(DESIGN)
  const context = page.context()
  await shorten(page, '500 mm')
  await expect.poll(() => keptForRecovery(page)).toContain('"lengthMm": 500')

  const second = await context.newPage()
  await second.goto(page.url())
  await second.getByRole('heading', { name: 'What will stand on the sill?' }).waitFor()
  // The first tab lives: what it keeps is its own and not offered here.
  await second.waitForTimeout(1_000)
  expect(await second.getByRole('dialog').count()).toBe(0)

  const session = await context.newCDPSession(page)
  void session.send('Page.crash').catch(() => undefined)
  await page.waitForEvent('crash')
  await second.reload()
  const asked = second.getByRole('dialog', { name: 'Bring back unsaved work?' })
  await asked.waitFor()
  const words = await asked.innerText()
  expect(words).toContain('sill.design.json')
  expect(words).toContain('Against its file: 1 channel changed.')
  expect(words).toMatch(/from \d\d?\/\d\d?\/\d{4}, \d\d?:\d\d/)
  await asked.getByRole('button', { name: 'Ask again next time' }).click()
  await second.reload()
  await asked.getByRole('button', { name: 'Bring it back' }).click()
  await expect.poll(() => fileState(second)).toBe('Changes not saved')
  await chooseListed(second, 1)
  expect(await cutLength(second).inputValue()).toBe('500 mm')
  await second.keyboard.press('Control+s')
  await expect.poll(() => fileState(second)).toBe('Saved in sill.design.json')
  await expect.poll(() => keptForRecovery(second)).toBe('')
})
