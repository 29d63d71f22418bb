import type { Page } from 'playwright-core'
import { openDemo, openRoom, planSettled, typeIn } from '../screens/acts'
import { setUpBench } from '../screens/page'

export interface LadderRun {
  readonly firstMs: number
  readonly wholeMs: number
  readonly checksum: number
}

/** A rate typed on the page, and the time until the first and the last row of the ladder stand in its table. */
export async function laddersOnPage(sizes: readonly number[], runs: number): Promise<readonly LadderRun[]> {
  const bench = await setUpBench()
  const { page } = await bench.open()
  await openDemo(page, 'Eighteen planters for sale, in inches')
  await openRoom(page, 'Price')
  await typeIn(page.getByLabel('How many to make at once'), '200')
  await typeIn(page.getByLabel('Sizes to compare'), sizes.join(', '))
  await planSettled(page)
  await wholeLadder(page, sizes.length)
  const found: LadderRun[] = []
  for (let run = 0; run < runs; run += 1) {
    await page.getByLabel('Your hour').focus()
    await watchRows(page, sizes.length)
    await page.getByLabel('Your hour').fill(String(30 + run))
    const times = await page.evaluate<Omit<LadderRun, 'checksum'>>('globalThis.ladderTimes')
    await planSettled(page)
    found.push({ ...times, checksum: await wholeLadder(page, sizes.length) })
  }
  await bench.close()
  return found
}

/** From the next letter typed on, by the page's own clock: rows are counted whenever they change. */
const watchRows = (page: Page, rows: number): Promise<void> =>
  page.evaluate((most) => {
    const table = '[aria-label="Batch sizes and what they come to"] tbody tr'
    const times = new Promise((done) => {
      addEventListener(
        'input',
        () => {
          const begun = performance.now()
          let firstMs: number | null = null
          const watch = new MutationObserver(() => {
            const known = document.querySelector('[aria-label="Batch sizes"] progress')?.getAttribute('value')
            const working = known !== undefined && known !== null
            const count = document.querySelectorAll(table).length
            if (firstMs === null && working && Number(known) >= 1) firstMs = performance.now() - begun
            if (firstMs === null || working || count < most) return
            watch.disconnect()
            done({ firstMs, wholeMs: performance.now() - begun })
          })
          watch.observe(document.body, { subtree: true, childList: true, attributes: true })
        },
        { once: true, capture: true }
      )
    })
    Object.assign(globalThis, { ladderTimes: times })
  }, rows)

/** Waits for the last row; the sum of all figures in the table. */
async function wholeLadder(page: Page, rows: number): Promise<number> {
  const part = page.getByRole('region', { name: 'Batch sizes', exact: true })
  await part.getByRole('progressbar').waitFor({ state: 'detached' })
  await part
    .locator('tbody tr')
    .nth(rows - 1)
    .waitFor()
  const cells = await part.locator('tbody td.number').allInnerTexts()
  return cells.reduce((sum, text) => sum + (Number.parseFloat(text) || 0), 0)
}
