import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS, printDesign } from '../../shared-model/design'
import { channelsListed, chooseListed, openDemo, typeIn } from './acts'
import { fileState } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const [kitchen] = DEMOS

interface Sent {
  readonly name: string
  readonly payload: unknown
}

/** The page as it stands in the desktop window: over a bridge that writes down what it is sent and answers as the shell does. */
async function desktopPage(
  opened: object | null = null
): Promise<{ readonly page: Page; readonly complaints: readonly string[] }> {
  const { page, complaints } = await bench.open({ before: (fresh) => fresh.addInitScript(bridge, opened) })
  return { page, complaints }
}

/** The window with a design in it, from its first screen. */
async function desktopAtWork(): ReturnType<typeof desktopPage> {
  const opened = await desktopPage()
  expect(await opened.page.evaluate(() => Reflect.get(globalThis, 'firstScreens'))).toBe(1)
  await openDemo(opened.page, kitchen?.name ?? '')
  return opened
}

/** Put into the page; `opened` is the file that the window is opened with. */
function bridge(opened: object | null): void {
  Object.assign(globalThis, { firstScreens: 0 })
  new MutationObserver(() => {
    if (document.querySelector('[aria-label="A new design in three steps"]') !== null)
      Object.assign(globalThis, { firstScreens: 1 })
  }).observe(document, { childList: true, subtree: true })
  const sent: { name: string; payload: unknown }[] = []
  const hearers: ((event: unknown) => void)[] = []
  const answers: Readonly<Record<string, unknown>> = {
    'document:save-as': { fileId: 'f1', name: 'kitchen.sillwright', stamp: 's' },
    'recent:list': [],
    'recovery:list': [],
    'print:pdf': true
  }
  Object.assign(globalThis, {
    sent,
    tellPage: (event: unknown) => {
      for (const hear of hearers) hear(event)
    },
    sillwright: {
      send: async (name: string, payload: unknown) => {
        sent.push({ name, payload })
        if (name === 'window:ready' && opened !== null)
          for (const hear of hearers) hear({ kind: 'opened', file: opened })
        return { ok: true, value: answers[name] ?? null }
      },
      listen: (hear: (event: unknown) => void) => {
        hearers.push(hear)
        return () => hearers.splice(hearers.indexOf(hear), 1)
      }
    }
  })
}

const sent = async (page: Page, name: string): Promise<readonly Sent[]> =>
  (await page.evaluate((): readonly Sent[] => Reflect.get(globalThis, 'sent'))).filter((each) => each.name === name)
const tell = (page: Page, event: unknown): Promise<void> =>
  page.evaluate((told) => Reflect.get(globalThis, 'tellPage')(told), event)
const question = (page: Page) => page.getByRole('dialog', { name: 'Save the changes?' })
const change = async (page: Page): Promise<void> => {
  await chooseListed(page, 1)
  await typeIn(page.getByLabel('Cut length', { exact: true }), '650 mm')
  await expect.poll(() => fileState(page)).toBe('Changes not saved')
  await expect.poll(async () => (await sent(page, 'window:state')).at(-1)?.payload).toMatchObject({ edited: true })
}

test('a window that is asked to close asks first where there are changes: Cancel keeps it, Don’t save closes it', async () => {
  const { page, complaints } = await desktopAtWork()
  await change(page)
  await tell(page, { kind: 'close-asked' })
  await question(page).getByRole('button', { name: 'Cancel' }).click()
  await question(page).waitFor({ state: 'hidden' })
  expect(await sent(page, 'window:close')).toEqual([])
  await tell(page, { kind: 'close-asked' })
  await question(page).getByRole('button', { name: 'Don’t save' }).click()
  await expect.poll(async () => (await sent(page, 'window:close')).length).toBe(1)
  expect(await sent(page, 'document:save-as')).toEqual([])
  expect(complaints).toEqual([])
})

test('a window that is asked to close saves, then closes; one without changes closes unasked', async () => {
  const { page, complaints } = await desktopAtWork()
  await tell(page, { kind: 'close-asked' })
  await expect.poll(async () => (await sent(page, 'window:close')).length).toBe(1)
  await change(page)
  await tell(page, { kind: 'close-asked' })
  await question(page).getByRole('button', { name: 'Save', exact: true }).click()
  await expect.poll(async () => (await sent(page, 'window:close')).length).toBe(2)
  const [saved] = await sent(page, 'document:save-as')
  expect(JSON.stringify(saved?.payload)).toContain('\\"lengthMm\\": 650')
  expect(complaints).toEqual([])
})

test('a window that is told something it cannot read says so and keeps its work', async () => {
  const { page, complaints } = await desktopAtWork()
  await change(page)
  await tell(page, { kind: 'unreadable', about: 'file.stamp' })
  const said = () => page.getByRole('alert').first().innerText()
  await expect.poll(said).toContain('cannot read (file.stamp)')
  expect(await fileState(page)).toBe('Changes not saved')
  expect(await page.getByLabel('Cut length', { exact: true }).inputValue()).toBe('650 mm')
  expect(complaints).toEqual([])
})

test('a window opened with a file shows its board at once, saved, and never the first screen', async () => {
  if (kitchen === undefined) throw new Error('there is no demo')
  const text = printDesign(kitchen.design)
  const file = { fileId: 'f7', name: 'kitchen.sillwright', kind: 'design', stamp: 's', text }
  const { page, complaints } = await desktopPage(file)
  await page.getByRole('application').waitFor()
  expect(await page.evaluate(() => Reflect.get(globalThis, 'firstScreens'))).toBe(0)
  expect(await fileState(page)).toBe('Saved in kitchen.sillwright')
  expect((await channelsListed(page)).length).toBe(kitchen.design.channels.length)
  expect(complaints).toEqual([])
})
