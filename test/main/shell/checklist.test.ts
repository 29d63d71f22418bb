import { readdirSync, readFileSync } from 'node:fs'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Bridge } from '../../../main/bridge/contract'
import { PAGE_HEADERS } from '../../../main/server/page-policy'
import { APP_ADDRESS } from '../../../main/shell/trusted-sender'
import { windowOptions } from '../../../main/shell/window-options'

/** The items of Electron's own security checklist (its tutorial "Security") that are kept by what the program leaves out. */
const root = new URL('../../../', import.meta.url)
const sourcesOf = (room: string): readonly (readonly [string, string])[] =>
  readdirSync(new URL(`${room}/`, root), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|html|mjs)$/.test(name))
    .map((name) => [`${room}/${name}`, readFileSync(new URL(`${room}/${name.replaceAll('\\', '/')}`, root), 'utf8')])
const sources = [...sourcesOf('main'), ...sourcesOf('renderer')]
const shell = sources.filter(([name]) => /^main\/(index|preload)\.ts$|^main\/shell\//.test(name))

const naming = (word: RegExp, among = sources): readonly string[] =>
  among.filter(([, text]) => word.test(text)).map(([name]) => name)

describe('Electron’s security checklist', () => {
  it('1, 18: loads its own page over its own scheme, nothing over http or file', () => {
    expect(APP_ADDRESS).toBe('app://bundle/index.html')
    expect(shell.length).toBeGreaterThan(10)
    expect(naming(/https?:\/\/|file:\/\/|loadFile|pathToFileURL/, shell)).toEqual([])
    expect(naming(/ELECTRON_RENDERER_URL/)).toEqual([])
  })

  it('2, 3, 4, 6, 8, 9, 10: turns on no power of the page that is off, and off no wall that is on', () => {
    const { webPreferences } = windowOptions('/preload.cjs')
    expect(webPreferences).toEqual({
      preload: '/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      safeDialogs: true,
      spellcheck: false
    })
    expect(naming(/enableBlinkFeatures|no-sandbox|disable-web-security|remote-debugging/)).toEqual([])
  })

  it('7: sends a policy with every page that runs no text as script', () => {
    const policy = PAGE_HEADERS['Content-Security-Policy'] ?? ''
    expect(policy.split('; ')).toEqual(
      expect.arrayContaining(["default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "connect-src 'self'"])
    )
    expect(policy).not.toMatch(/'unsafe-eval'|'unsafe-inline'|https?:|\*/)
    expect(
      naming(/dangerouslySetInnerHTML|\.innerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function\(/)
    ).toEqual([])
  })

  it('11, 12: has no webview and lets no window open', () => {
    expect(naming(/<webview|allowpopups/i)).toEqual([])
    expect(naming(/window\.open\(/)).toEqual([])
  })

  it('15: opens no address outside itself', () => {
    expect(naming(/openExternal/)).toEqual([])
  })

  it('16: stands on one pinned version of Electron, of a line that its makers support', () => {
    const { devDependencies } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'))
    // The makers support the newest three major lines; 45 is the newest of them as this is written.
    expect(devDependencies.electron).toMatch(/^45\.\d+\.\d+$/)
  })

  it('runs no script of its own making in the page', () => {
    expect(naming(/executeJavaScript|insertCSS|ipcRenderer\.sendSync|@electron\/remote/)).toEqual([])
  })
})

const sent: unknown[][] = []
const listeners = new Map<string, (event: unknown, told: unknown) => void>()
const exposed = new Map<string, unknown>()

vi.mock('electron', () => ({
  contextBridge: { exposeInMainWorld: (name: string, value: unknown) => exposed.set(name, value) },
  ipcRenderer: {
    invoke: (...args: unknown[]) => {
      sent.push(args)
      return Promise.resolve({ ok: true, value: null })
    },
    on: (name: string, handler: (event: unknown, told: unknown) => void) => listeners.set(name, handler),
    off: (name: string) => listeners.delete(name)
  }
}))

describe('20: the page has no part of Electron', () => {
  let bridge: Bridge
  beforeEach(async () => {
    sent.length = 0
    listeners.clear()
    exposed.clear()
    vi.resetModules()
    await import('../../../main/preload')
    bridge = exposed.get('sillwright') as Bridge
  })

  it('but two functions of the program’s own', () => {
    expect([...exposed.keys()]).toEqual(['sillwright'])
    expect(Object.entries(bridge).map(([name, value]) => `${name} ${typeof value}`)).toEqual([
      'send function',
      'listen function'
    ])
  })

  it('sends the messages of the contract and no others', async () => {
    await bridge.send('recent:list', null)
    expect(sent).toEqual([['recent:list', null]])
    const other = await Reflect.apply(bridge.send, undefined, ['shell:quit', null])
    expect(other).toEqual({ ok: false, problem: { code: 'bad-message', about: 'shell:quit' } })
    expect(sent).toHaveLength(1)
  })

  it('hears what it is told and never the sender', () => {
    const heard: unknown[][] = []
    const stop = bridge.listen((...args) => heard.push(args))
    listeners.get('shell:event')?.({ sender: 'Electron' }, { kind: 'close-asked' })
    expect(heard).toEqual([[{ kind: 'close-asked' }]])
    stop()
    expect(listeners.size).toBe(0)
  })
})
