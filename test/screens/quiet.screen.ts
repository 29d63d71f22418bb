import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, openRoom, planSettled, ROOMS, sheetDrawn } from './acts'
import { benchForTests } from './page'

const bench = benchForTests()

for (const demo of DEMOS) {
  test(`no screen of the demo “${demo.name}” writes an error or breaks the policy, the worker included`, async () => {
    const { page, complaints } = await bench.open({ policyWatch: true })
    const workers: string[] = []
    page.on('worker', (worker) => workers.push(worker.url()))
    await openDemo(page, demo.name)
    await planSettled(page)
    for (const room of ROOMS) {
      await openRoom(page, room)
      if (room === 'Build sheet') await sheetDrawn(page)
    }
    expect(workers.some((url) => url.includes('plan-worker'))).toBe(true)
    expect(complaints).toEqual([])
  })
}

test('a breach of the policy made on purpose inside the worker is heard', async () => {
  const { page, complaints } = await bench.open({
    policyWatch: true,
    inWorker: 'try { new Function("return 1")() } catch { /* refused, as it should be */ }\n'
  })
  await openDemo(page, DEMOS[0]?.name ?? '')
  await planSettled(page)
  await expect.poll(() => complaints.join()).toMatch(/in a worker: script-src/)
})
