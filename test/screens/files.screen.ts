import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS, printDesign } from '../../shared-model/design'
import { chooseListed, openDemo, typeIn } from './acts'
import { fileState, keptForRecovery, openFile, saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const [kitchen, market] = DEMOS

const shorten = async (page: Page, length: string): Promise<void> => {
  await chooseListed(page, 1)
  await typeIn(page.getByLabel('Cut length', { exact: true }), length)
  await expect.poll(() => fileState(page)).toBe('Changes not saved')
}
const openOther = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'File', exact: true }).click()
  await page.getByRole('button', { name: `Demo: ${market?.name}` }).click()
}
const title = (page: Page): Promise<string> => page.getByLabel('Title of the design').inputValue()
const question = (page: Page) => page.getByRole('dialog', { name: 'Save the changes?' })

test('a design saved, and opened again after a reload, is the same document', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  await shorten(page, '655 mm')
  const saved = await saveDesign(page)
  await expect.poll(() => fileState(page)).toBe(`Saved in ${saved.name}`)
  expect(saved.design.channels[0]?.lengthMm).toBe(655)
  expect({ ...saved.design, channels: saved.design.channels.slice(1) }).toEqual({
    ...kitchen?.design,
    channels: kitchen?.design.channels.slice(1)
  })

  await page.reload()
  await page.getByRole('heading', { name: 'What will stand on the sill?' }).waitFor()
  expect(await page.getByRole('dialog').count()).toBe(0)
  await openFile(page, { name: saved.name, text: await readFile(saved.path, 'utf8') })
  await expect.poll(() => title(page)).toBe(saved.design.title)
  await expect.poll(() => fileState(page)).toBe(`Saved in ${saved.name}`)
  expect((await saveDesign(page)).design).toEqual(saved.design)
  expect(complaints).toEqual([])
})

test('every save arrives, however fast one is asked for after another; a key held down saves once', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  const names: string[] = []
  page.on('download', (file) => names.push(file.suggestedFilename()))
  for (let press = 0; press < 20; press += 1) await page.keyboard.press('Control+s')
  await expect.poll(() => names.length).toBe(20)
  await page.keyboard.down('Control')
  for (let repeat = 0; repeat < 5; repeat += 1) await page.keyboard.down('s')
  await page.keyboard.up('s')
  await page.keyboard.up('Control')
  await expect.poll(() => names.length).toBe(21)
  await saveDesign(page)
  expect(names).toHaveLength(22)
  expect(complaints).toEqual([])
})

test('leaving a changed design asks first: Cancel stays, Don’t save leaves', async () => {
  const { page } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  await shorten(page, '650 mm')

  await openOther(page)
  await question(page).getByRole('button', { name: 'Cancel' }).click()
  expect(await title(page)).toBe(kitchen?.design.title)
  expect(await page.getByLabel('Cut length', { exact: true }).inputValue()).toBe('650 mm')

  await openOther(page)
  await page.keyboard.press('Escape')
  expect(await title(page)).toBe(kitchen?.design.title)

  await openOther(page)
  await question(page).getByRole('button', { name: 'Don’t save' }).click()
  await expect.poll(() => title(page)).toBe(market?.design.title)
})

test('leaving a changed design asks first: Save writes the file, then leaves', async () => {
  const { page } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  await shorten(page, '645 mm')
  await openOther(page)
  const written = page.waitForEvent('download')
  await question(page).getByRole('button', { name: 'Save', exact: true }).click()
  const text = await readFile(await (await written).path(), 'utf8')
  expect(JSON.parse(text).channels[0].lengthMm).toBe(645)
  await expect.poll(() => title(page)).toBe(market?.design.title)
})

test('a design just opened is left without a question', async () => {
  const { page } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  await openOther(page)
  await expect.poll(() => title(page)).toBe(market?.design.title)
  expect(await page.getByRole('dialog').count()).toBe(0)
})

test('work that was never saved comes back after the page is gone', async () => {
  const { page } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  await shorten(page, '640 mm')
  await expect.poll(() => keptForRecovery(page), { timeout: 10_000 }).toContain('"lengthMm": 640')
  page.on('dialog', (dialog) => void dialog.accept())
  await page.reload()
  const asked = page.getByRole('dialog', { name: 'Bring back unsaved work?' })
  await asked.getByRole('button', { name: 'Bring it back' }).click()
  await expect.poll(() => title(page)).toBe(kitchen?.design.title)
  await expect.poll(() => fileState(page)).toBe('Changes not saved')
  const back = await saveDesign(page)
  expect(back.design.channels[0]?.lengthMm).toBe(640)
  expect(printDesign({ ...back.design, channels: [] })).toBe(
    printDesign({ ...(kitchen?.design ?? back.design), channels: [] })
  )
})

/** Drops files on the window, as a hand does that drags them out of a folder. */
const dropFiles = (page: Page, files: readonly { readonly name: string; readonly text: string }[]): Promise<boolean> =>
  page.evaluate((given) => {
    const carried = new DataTransfer()
    for (const { name, text } of given) carried.items.add(new File([text], name))
    const board = document.querySelector('main') ?? document.body
    const event = (kind: string) => new DragEvent(kind, { dataTransfer: carried, bubbles: true, cancelable: true })
    // Taken where the browser would else leave the page for the file.
    return ['dragover', 'drop'].every((kind) => !board.dispatchEvent(event(kind)))
  }, files)

test('a design dragged onto the window is opened, after the question about unsaved changes', async () => {
  const { page, complaints } = await bench.open()
  await page.getByRole('button', { name: 'Start with the bare sill' }).waitFor()
  const first = { name: 'market.sillwright', text: market === undefined ? '' : printDesign(market.design) }
  expect(await dropFiles(page, [first])).toBe(true)
  await expect.poll(() => title(page)).toBe(market?.design.title)
  await expect.poll(() => fileState(page)).toBe('Saved in market.sillwright')

  await shorten(page, '500 mm')
  const second = { name: 'kitchen.json', text: kitchen === undefined ? '' : printDesign(kitchen.design) }
  expect(await dropFiles(page, [second])).toBe(true)
  await question(page).getByRole('button', { name: 'Cancel' }).click()
  expect(await title(page)).toBe(market?.design.title)
  await dropFiles(page, [second])
  await question(page).getByRole('button', { name: 'Don’t save' }).click()
  await expect.poll(() => title(page)).toBe(kitchen?.design.title)
  expect(complaints).toEqual([])
})

test('what cannot be opened is said when it is dragged onto the window, and the design stays', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen?.name ?? '')
  const said = () => page.getByRole('alert').first().innerText()
  await dropFiles(page, [{ name: 'photo.json', text: '\u0089PNG' }])
  await expect.poll(said).toContain('photo.json cannot be opened.')
  const two = ['a.json', 'b.json'].map((name) => ({ name, text: '{}' }))
  await dropFiles(page, two)
  await expect.poll(said).toContain('2 files were dropped. One design is opened at a time.')
  expect(await title(page)).toBe(kitchen?.design.title)
  expect(complaints).toEqual([])
})
