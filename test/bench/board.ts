import { openDemo, planSettled } from '../screens/acts'
import { setUpBench } from '../screens/page'
import type { BenchRow } from './measure'

const RUNS = 5

/** Times in headless Chromium from asking for the page to its first screen, and from opening a demo to its drawn board. */
export const benchBoard = async (): Promise<readonly BenchRow[]> => {
  const bench = await setUpBench()
  const first: number[] = []
  const drawn: number[] = []
  let channels = 0
  for (let run = 0; run < RUNS; run += 1) {
    const begun = performance.now()
    const { page, close } = await bench.open()
    await page.getByRole('button', { name: /^Open A kitchen/ }).waitFor()
    const shown = performance.now()
    await openDemo(page, 'A kitchen windowsill, in millimetres')
    drawn.push(performance.now() - shown)
    await planSettled(page)
    channels = await page.locator('canvas').count()
    first.push(shown - begun)
    await close()
  }
  await bench.close()
  return [row('page to its first screen', first, channels), row('a demo opened to its drawn board', drawn, channels)]
}

const row = (name: string, times: number[], checksum: number): BenchRow => {
  times.sort((a, b) => a - b)
  return { name, minMs: times[0] ?? 0, medianMs: times[RUNS >> 1] ?? 0, checksum }
}
