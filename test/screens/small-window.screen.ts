import type { Locator, Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, openRoom, planSettled, ROOMS } from './acts'
import { benchForTests, type OpenPage } from './page'

const bench = benchForTests()

/** The letters of the whole page at twice their size, as the browser's own setting for text has it. */
async function doubleText({ page, context }: OpenPage): Promise<void> {
  const session = await context.newCDPSession(page)
  await session.send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } })
  await page.waitForFunction(() => getComputedStyle(document.documentElement).fontSize === '32px')
}

/** Contrast of an element's letters with its ground: WCAG 2.2, "contrast ratio" and "relative luminance". */
async function contrast(action: Locator): Promise<number> {
  const colours = await action.evaluate((element) => {
    const { color, backgroundColor } = getComputedStyle(element)
    return [color, backgroundColor]
  })
  const [light = 0, dark = 0] = colours.map(luminance).sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
    const share = Number(part) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** What is wrong with the page as it stands: wider than the window, or a primary action that cannot be read or hit. */
async function cramped(page: Page): Promise<readonly string[]> {
  const wide = await page.evaluate(() => {
    const over = (element: Element): boolean => element.scrollWidth > element.clientWidth + 1
    return [document.documentElement, ...document.querySelectorAll('main')].filter(over).map((each) => each.tagName)
  })
  const faults = wide.map((tag) => `${tag} scrolls sideways`)
  for (const action of await page.locator('main .button.primary').all()) {
    const label = (await action.textContent()) ?? ''
    if (await action.evaluate((each) => each.scrollWidth > each.clientWidth + 1)) faults.push(`${label} is clipped`)
    if (await action.isEnabled())
      await action.click({ trial: true, timeout: 10_000 }).catch(() => faults.push(`${label} cannot be hit`))
    await action.hover()
    if ((await contrast(action)) < 4.5) faults.push(`${label} cannot be read under the pointer`)
  }
  return faults
}

const looks = [
  { name: 'in a window of 1280 by 720', look: { width: 1280, height: 720 }, double: false },
  { name: 'with text at 200 %', look: { width: 1280, height: 720 }, double: true }
]

for (const { name, look, double } of looks) {
  test(`no screen scrolls sideways and no primary action is cut off, ${name}`, async () => {
    const opened = await bench.open(look)
    const { page } = opened
    if (double) await doubleText(opened)
    const found: Record<string, readonly string[]> = { 'First screen': await cramped(page) }
    await openDemo(page, DEMOS[0]?.name ?? '')
    await planSettled(page)
    for (const room of ROOMS) {
      await openRoom(page, room)
      found[room] = await cramped(page)
    }
    expect(found).toEqual(Object.fromEntries(['First screen', ...ROOMS].map((each) => [each, []])))
  })
}
