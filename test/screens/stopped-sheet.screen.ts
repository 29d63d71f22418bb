import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, openRoom, sheetDrawn } from './acts'
import { benchForTests } from './page'

const bench = benchForTests()
const [demo] = DEMOS

test('the writing of the sheet tells that it runs, can be stopped, leaves the window free, and starts again', async () => {
  if (demo === undefined) throw new Error('a demo is wanted')
  const { page, complaints } = await bench.open()
  // The worker waits for its faces as long as this test holds them back.
  let letGo: () => void = () => {}
  const held = new Promise<void>((go) => {
    letGo = go
  })
  await page.context().route(/DejaVu.*\.ttf$/, async (route) => {
    await held
    await route.continue().catch(() => undefined)
  })
  await openDemo(page, demo.name)
  await openRoom(page, 'Build sheet')
  await page.getByRole('progressbar', { name: 'Writing the pages' }).waitFor()
  // The window goes on drawing meanwhile.
  await page.evaluate(() => new Promise<void>((go) => requestAnimationFrame(() => requestAnimationFrame(() => go()))))
  await page.getByRole('button', { name: 'Stop', exact: true }).click()
  await page.getByText('Stopped.').waitFor()
  expect(await page.getByRole('button', { name: 'Write the PDF' }).isDisabled()).toBe(true)
  letGo()
  await page.getByRole('button', { name: 'Write again' }).click()
  await sheetDrawn(page)
  expect(await page.getByRole('button', { name: 'Write the PDF' }).isDisabled()).toBe(false)
  expect(complaints).toEqual([])
})
