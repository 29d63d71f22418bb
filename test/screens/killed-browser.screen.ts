import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type RunningPage, startPageServer } from '../../main/server/page-server'
import { DEMOS } from '../../shared-model/design'
import { chooseListed, openDemo, typeIn } from './acts'
import { fileState, keptForRecovery } from './design-files'
import { SWITCHES } from './page'

const built = fileURLToPath(new URL('../../out/renderer', import.meta.url))
const WAIT = { timeout: 80_000, interval: 200 }
let profile = ''
let server: RunningPage | null = null
let running: ChildProcess | null = null

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'sillwright-profile-'))
})
afterAll(async () => {
  await killed()
  await server?.close()
  await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 })
})

/** A browser of its own process, on a profile that outlives it, with the page open. */
async function started(address: string): Promise<Page> {
  const place = join(profile, 'DevToolsActivePort')
  await rm(place, { force: true })
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`, '--lang=en-GB', 'about:blank']
  running = spawn(process.env.SILLWRIGHT_BROWSER ?? '', [...SWITCHES, ...own], { stdio: 'ignore' })
  const line = () => readFile(place, 'utf8').catch(() => '')
  await expect.poll(line, WAIT).toMatch(/^\d+\n/)
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${Number.parseInt(await line(), 10)}`)
  const [context] = browser.contexts()
  if (context === undefined) throw new Error('the browser has no window')
  context.setDefaultTimeout(WAIT.timeout)
  const page = await context.newPage()
  await page.goto(address)
  return page
}

/** Ends the browser as a power cut does: nothing of it hears of it. */
async function killed(): Promise<void> {
  const ending = running
  running = null
  if (ending === null || ending.exitCode !== null) return
  const gone = new Promise((resolve) => ending.once('exit', resolve))
  ending.kill('SIGKILL')
  await gone
}

test('browser and page server killed in the middle of a change: the next start offers it with its time and difference', async () => {
  server = await startPageServer(built, 0)
  const { address } = server
  const page = await started(address)
  await openDemo(page, DEMOS[0]?.name ?? '')
  await chooseListed(page, 1)
  await typeIn(page.getByLabel('Cut length', { exact: true }), '640 mm')
  await expect.poll(() => keptForRecovery(page), WAIT).toContain('"lengthMm": 640')
  await killed()
  await server.close()

  server = await startPageServer(built, Number(new URL(address).port))
  expect(server.address).toBe(address)
  const again = await started(address)
  const asked = again.getByRole('dialog', { name: 'Bring back unsaved work?' })
  await asked.waitFor()
  const words = await asked.innerText()
  expect(words).toMatch(/from [^.]*\d\d?[:.]\d\d/)
  expect(words).toContain('Against the design it began with: 1 channel changed.')
  await asked.getByRole('button', { name: 'Bring it back' }).click()
  await expect.poll(() => fileState(again), WAIT).toBe('Changes not saved')
  await chooseListed(again, 1)
  expect(await again.getByLabel('Cut length', { exact: true }).inputValue()).toBe('640 mm')
}, 400_000)
