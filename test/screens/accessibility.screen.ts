import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { chooseListed, openDemo, openRoom, planSettled, ROOMS, sheetDrawn, startBare, typeIn } from './acts'
import { accessibilityFindings, benchForTests } from './page'

const bench = benchForTests()
const name = DEMOS[0]?.name ?? ''

for (const colours of ['light', 'dark'] as const) {
  test(`axe-core finds nothing on any screen of the demo, ${colours}`, async () => {
    const { page } = await bench.open({ colours })
    const found: Record<string, readonly string[]> = { 'First screen': await accessibilityFindings(page) }
    await openDemo(page, name)
    await planSettled(page)
    for (const room of ROOMS) {
      await openRoom(page, room)
      if (room === 'Board') await chooseSite(page)
      if (room === 'Build sheet') await sheetDrawn(page)
      found[room] = await accessibilityFindings(page)
    }
    expect(found).toEqual(Object.fromEntries(['First screen', ...ROOMS].map((each) => [each, []])))
  })

  test(`axe-core finds nothing with a list, the findings or a question open, ${colours}`, async () => {
    const { page } = await bench.open({ colours })
    await startBare(page)
    const bare = await accessibilityFindings(page)
    await page.getByRole('button', { name: 'Add a channel' }).click()
    await typeIn(page.getByLabel('Cut length', { exact: true }), '9 m')
    await page.getByRole('button', { name: /Show findings/ }).click()
    await page.getByRole('button', { name: 'File', exact: true }).click()
    const listed = await accessibilityFindings(page)
    await page.getByRole('button', { name: `Demo: ${name}` }).click()
    await page.getByRole('dialog', { name: 'Save the changes?' }).waitFor()
    expect({ bare, listed, asked: await accessibilityFindings(page) }).toEqual({ bare: [], listed: [], asked: [] })
  })
}

/** Every kind of field stands in the strip when a site is chosen. */
async function chooseSite(page: Page): Promise<void> {
  await chooseListed(page, 1)
  await page.getByRole('button', { name: /^Site 1\b/ }).click()
}
