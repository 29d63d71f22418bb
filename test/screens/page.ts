import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll } from 'vitest'
import { type RunningPage, startPageServer } from '../../main/server/page-server'
import { watchPolicy } from './policy-watch'

const built = fileURLToPath(new URL('../../out/renderer', import.meta.url))
const axeSource = readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** Quiet on a closed network, and no sandbox of its own where it runs as root. */
export const SWITCHES = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])
]

/** A loaded machine with two cores writes a sheet in this time at the latest. */
const MOST_WAIT_MS = 240_000

export interface Look {
  readonly width?: number
  readonly height?: number
  readonly colours?: 'light' | 'dark'
  readonly forcedColours?: boolean
  /** Leave the browser's own file dialogs in place: nobody can answer them in a test, so by default files are downloaded. */
  readonly fileDialogs?: boolean
  /** Hear policy violations inside workers too, by a listener put at the head of every script that is served. */
  readonly policyWatch?: boolean
  /** Done to the page before it is asked for. */
  readonly before?: (page: Page) => Promise<unknown>
  /** Run at the head of the program's worker: to show that a violation in it is heard. */
  readonly inWorker?: string
}

/** One served copy of the built page and one browser, shared by the tests of a file. */
export interface Bench {
  readonly open: (look?: Look) => Promise<OpenPage>
  readonly close: () => Promise<void>
}

export interface OpenPage {
  readonly page: Page
  readonly context: BrowserContext
  /** Errors on the console, uncaught errors and policy violations (workers' too), in order. */
  readonly complaints: readonly string[]
  readonly close: () => Promise<void>
}

/** The bench of one test file: set up before its tests, its pages closed after each, itself closed after all. */
export function benchForTests(): { readonly open: (look?: Look) => Promise<OpenPage> } {
  let bench: Bench | null = null
  const pages: OpenPage[] = []
  beforeAll(async () => {
    bench = await setUpBench()
  })
  afterEach(async () => {
    for (const each of pages.splice(0)) await each.close()
  })
  afterAll(() => bench?.close())
  return {
    open: async (look) => {
      if (bench === null) throw new Error('the bench is not set up yet')
      const opened = await bench.open(look)
      pages.push(opened)
      return opened
    }
  }
}

/** `more` are further switches of the browser: a measurement lets frames follow each other as fast as they are drawn. */
export async function setUpBench(more: readonly string[] = [], folder = built): Promise<Bench> {
  const executablePath = process.env.SILLWRIGHT_BROWSER
  if (executablePath === undefined) throw new Error('SILLWRIGHT_BROWSER names no browser: run npm test')
  const server = await startPageServer(folder, 0)
  const browser = await chromium.launch({ executablePath, args: [...SWITCHES, ...more] })
  return {
    open: (look = {}) => openPage(browser, server, look),
    close: async () => {
      await browser.close()
      await server.close()
    }
  }
}

async function openPage(browser: Browser, server: RunningPage, look: Look): Promise<OpenPage> {
  const context = await browser.newContext({
    // A first start in millimetres; the demo designs bring their own workshop.
    locale: 'en-GB',
    viewport: { width: look.width ?? 1440, height: look.height ?? 900 },
    colorScheme: look.colours ?? 'light',
    forcedColors: look.forcedColours ? 'active' : 'none',
    acceptDownloads: true
  })
  if (look.fileDialogs !== true) {
    await context.addInitScript(() => {
      for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(globalThis, name)
    })
  }
  context.setDefaultTimeout(MOST_WAIT_MS)
  const complaints: string[] = []
  if (look.policyWatch === true) await watchPolicy(context, look.inWorker ?? '')
  const page = await context.newPage()
  page.on('console', (message) => {
    if (message.type() === 'error' || /Content Security Policy|React/.test(message.text()))
      complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(String(error)))
  // From the first: a chooser that opens while the driver is still asking for it is closed by the browser.
  page.on('filechooser', () => {})
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`Content Security Policy: ${event.violatedDirective} ${event.blockedURI}`)
    )
  })
  await look.before?.(page)
  await page.goto(server.address)
  // The window is drawn when the kept workshop has been read.
  await page.locator('#root > *').first().waitFor()
  return { page, context, complaints, close: () => context.close() }
}

/** What axe-core finds on the page as it stands: rule and the elements it names. */
export async function accessibilityFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(await axeSource)
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: {
        run: () => Promise<{ violations: { id: string; nodes: { target: unknown; failureSummary: string }[] }[] }>
      }
    }
    const { violations } = await axe.run()
    return violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target} ${node.failureSummary}`))
  })
}
