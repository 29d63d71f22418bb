import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'

interface Called {
  readonly name: string
  readonly args: readonly unknown[]
}

const calls: Called[] = []
const record =
  (name: string) =>
  (...args: readonly unknown[]): void => {
    calls.push({ name, args })
  }
const named = (name: string): readonly Called[] => calls.filter((each) => each.name === name)

/** What the system answers: this is the only run of the program; its PDF viewer took the file (no words). */
let onlyRun = true
let viewerSays = ''

vi.mock('electron', () => {
  class FakeWindow {
    webContents = { id: 1, send: record('send'), on: record('contents.on'), reload: record('reload') }
    static getFocusedWindow = () => new FakeWindow(null)
    constructor(options: unknown) {
      if (options !== null) record('window')(options)
    }
    isFocused = () => false
    isMinimized = () => true
    restore = record('restore')
    focus = record('focus')
    maximize = record('maximize')
    isMaximized = () => false
    getNormalBounds = () => ({ x: 10, y: 20, width: 1200, height: 800 })
    on = record('window.on')
    once = record('window.once')
    loadURL = record('loadURL')
    show = record('show')
    setTitle = record('setTitle')
    setDocumentEdited = record('setDocumentEdited')
    close = record('close')
  }
  return {
    app: {
      enableSandbox: record('enableSandbox'),
      requestSingleInstanceLock: () => onlyRun,
      quit: record('quit'),
      on: record('app.on'),
      getPath: () => home,
      addRecentDocument: record('addRecentDocument'),
      commandLine: { appendSwitch: record('appendSwitch') },
      whenReady: () => {
        record('whenReady')()
        return Promise.resolve()
      }
    },
    BrowserWindow: FakeWindow,
    dialog: { showMessageBox: record('say') },
    shell: {
      openPath: async (path: string) => {
        record('openPath')(path, await readFile(path))
        return viewerSays
      }
    },
    screen: { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1040 } }] },
    ipcMain: { handle: record('ipc.handle') },
    Menu: { setApplicationMenu: record('menu'), buildFromTemplate: (template: unknown) => template },
    protocol: { registerSchemesAsPrivileged: record('scheme'), handle: record('protocol.handle') },
    session: {
      defaultSession: {
        setPermissionRequestHandler: record('permission.request'),
        setPermissionCheckHandler: record('permission.check'),
        setDevicePermissionHandler: record('permission.device'),
        setDisplayMediaRequestHandler: record('permission.display'),
        on: record('session.on'),
        webRequest: { onBeforeRequest: record('onBeforeRequest') }
      }
    }
  }
})

let home = ''
beforeEach(async () => {
  home = await mkdtemp(join(tmpdir(), 'sillwright-home-'))
  calls.length = 0
  vi.resetModules()
  await import('../../../main/index')
  await vi.waitFor(() => expect(named('window.on').map(({ args }) => args[0])).toContain('closed'))
})
afterEach(() => rm(home, { recursive: true, force: true }))

const page = { sender: { id: 1 }, senderFrame: { url: 'app://bundle/index.html', parent: null } }

/** The function that was handed over in a call. */
function handed<F>(name: string, at: number, first?: string): F {
  const call = named(name).find((each) => first === undefined || each.args[0] === first)
  if (call === undefined) throw new Error(`${name} was not called`)
  return call.args[at] as F
}

describe('the desktop shell', () => {
  it('registers its scheme once, before the app is ready', () => {
    expect(named('scheme')).toHaveLength(1)
    const order = calls.map((each) => each.name)
    expect(order.indexOf('scheme')).toBeLessThan(order.indexOf('whenReady'))
    expect(named('scheme')[0]?.args[0]).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } }
    ])
  })

  it('opens one sandboxed, isolated window without Node and loads the page by its scheme', () => {
    expect(named('enableSandbox')).toHaveLength(1)
    const options = named('window')[0]?.args[0] as { webPreferences: Record<string, unknown> }
    expect(options.webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false
    })
    expect(String(options.webPreferences.preload)).toMatch(/preload[\\/]preload\.cjs$/)
    expect(named('loadURL')[0]?.args).toEqual(['app://bundle/index.html'])
  })

  it('denies every permission, in request, check and device form', () => {
    const answers: boolean[] = []
    handed<(c: unknown, p: string, decide: (a: boolean) => void) => void>('permission.request', 0)({}, 'camera', (a) =>
      answers.push(a)
    )
    answers.push(handed<() => boolean>('permission.check', 0)(), handed<() => boolean>('permission.device', 0)())
    expect(answers).toEqual([false, false, false])
    const given: unknown[] = []
    handed<(r: unknown, give: (streams: unknown) => void) => void>('permission.display', 0)({}, (each) =>
      given.push(each)
    )
    expect(given).toEqual([{}])
  })

  it('denies downloads and every address but its own', () => {
    const event = { preventDefault: vi.fn() }
    handed<(e: typeof event) => void>('session.on', 1, 'will-download')(event)
    expect(event.preventDefault).toHaveBeenCalledOnce()
    const guard = handed<(d: { url: string }, decide: (a: { cancel: boolean }) => void) => void>('onBeforeRequest', 0)
    const cancelled = (url: string): boolean => {
      let cancel = false
      guard({ url }, (answer) => {
        cancel = answer.cancel
      })
      return cancel
    }
    expect(['app://bundle/index.html', 'blob:app://bundle/1', 'data:,x'].map(cancelled)).toEqual([false, false, false])
    expect(['https://sills.example/', 'http://127.0.0.1/', 'file:///x', 'blob:https://x/1'].map(cancelled)).toEqual([
      true,
      true,
      true,
      true
    ])
  })

  it('denies navigation, new windows and webviews in whatever contents come to be', () => {
    const made = handed<(e: unknown, contents: unknown) => void>('app.on', 1, 'web-contents-created')
    const on = new Map<string, (event: { url: string; preventDefault: () => void }) => void>()
    let openHandler: (() => { action: string }) | undefined
    made(
      {},
      {
        setWindowOpenHandler: (handler: () => { action: string }) => {
          openHandler = handler
        },
        on: (name: string, handler: (event: { url: string; preventDefault: () => void }) => void) =>
          on.set(name, handler)
      }
    )
    expect(openHandler?.()).toEqual({ action: 'deny' })
    const denied = (name: string, url: string): boolean => {
      let stopped = false
      on.get(name)?.({
        url,
        preventDefault: () => {
          stopped = true
        }
      })
      return stopped
    }
    expect(denied('will-navigate', 'https://sills.example/')).toBe(true)
    expect(denied('will-navigate', 'app://bundle/index.html')).toBe(false)
    expect(denied('will-attach-webview', 'app://bundle/index.html')).toBe(true)
    expect(denied('will-redirect', 'app://bundle/index.html')).toBe(true)
    expect(denied('will-frame-navigate', 'https://sills.example/')).toBe(true)
    expect(denied('will-frame-navigate', 'blob:app://bundle/1')).toBe(false)
  })

  it('asks the page before a window with unsaved changes closes', async () => {
    const event = { preventDefault: vi.fn() }
    const closing = handed<(e: typeof event) => void>('window.on', 1, 'close')
    closing(event)
    expect(event.preventDefault).not.toHaveBeenCalled()
    const state = handed<(sender: unknown, payload: unknown) => Promise<unknown>>('ipc.handle', 1, 'window:state')
    await state(page, { title: 'Kitchen', edited: true })
    closing(event)
    expect(event.preventDefault).toHaveBeenCalledOnce()
    expect(named('send')).toMatchObject([{ args: ['shell:event', { kind: 'close-asked' }] }])
    expect(named('setTitle')[0]?.args).toEqual(['Kitchen'])
  })

  it('lets no name on a network be looked up', () => {
    expect(named('appendSwitch')[0]?.args).toEqual(['host-resolver-rules', 'MAP * ~NOTFOUND'])
  })

  it('keeps one run of the program: a second start brings the window to the front with its file', async () => {
    const path = join(home, 'given.sillwright.json')
    await writeFile(path, 'given')
    const second = handed<(e: unknown, argv: readonly string[], folder: string) => void>('app.on', 1, 'second-instance')
    // Named from the folder that the second start was made in, which is not this one's.
    second({}, ['sillwright', '--flag', 'given.sillwright.json'], home)
    expect([named('restore').length, named('focus').length]).toEqual([1, 1])
    await handed<(sender: unknown, payload: unknown) => Promise<unknown>>('ipc.handle', 1, 'window:ready')(page, null)
    await vi.waitFor(() =>
      expect(named('send')).toMatchObject([{ args: ['shell:event', { kind: 'opened', file: { text: 'given' } }] }])
    )
    expect(named('addRecentDocument')[0]?.args).toEqual([path])
  })

  it('takes files from the system as soon as the program starts, before it is ready', () => {
    const order = calls.map((each) => (each.name === 'app.on' ? String(each.args[0]) : each.name))
    expect(order.indexOf('open-file')).toBeLessThan(order.indexOf('whenReady'))
    const event = { preventDefault: vi.fn() }
    handed<(e: typeof event, path: string) => void>('app.on', 1, 'open-file')(event, join(home, 'none.sillwright.json'))
    expect(event.preventDefault).toHaveBeenCalledOnce()
  })

  it('remembers where a window stood, and brings a page that died back once', async () => {
    const onClose = named('window.on').filter(({ args }) => args[0] === 'close')
    for (const { args } of onClose) (args[1] as (e: unknown) => void)({ preventDefault: () => undefined })
    await vi.waitFor(async () =>
      expect(JSON.parse(await readFile(join(home, 'window.json'), 'utf8'))).toEqual({
        x: 10,
        y: 20,
        width: 1200,
        height: 800,
        maximized: false
      })
    )
    const died = named('contents.on').filter(({ args }) => args[0] === 'render-process-gone')
    const die = (): void => {
      for (const { args } of died) (args[1] as (e: unknown, why: { reason: string }) => void)({}, { reason: 'crashed' })
    }
    die()
    die()
    expect(named('reload')).toHaveLength(1)
  })

  it('gives the menu the platform’s own roles and the page’s commands', () => {
    const text = JSON.stringify(named('menu')[0]?.args[0])
    for (const role of ['cut', 'copy', 'paste', 'selectAll', 'togglefullscreen', 'windowMenu', 'close']) {
      expect(text).toContain(`"role":"${role}"`)
    }
  })
})

describe('the build sheet', () => {
  it('is printed by the system’s own viewer, from a file of the same bytes, and cleared away where there is none', async () => {
    const print = handed<(sender: unknown, payload: unknown) => Promise<unknown>>('ipc.handle', 1, 'print:pdf')
    const bytes = new Uint8Array([0x25, 0x50, 0x44, 0x46])
    viewerSays = ''
    expect(await print(page, { bytes })).toEqual({ ok: true, value: true })
    viewerSays = 'There is no viewer.'
    expect(await print(page, { bytes })).toEqual({ ok: true, value: false })
    const [taken, refused] = named('openPath').map(({ args }) => ({ path: String(args[0]), bytes: args[1] }))
    expect([taken?.bytes, refused?.bytes]).toEqual([Buffer.from(bytes), Buffer.from(bytes)])
    expect(taken?.path).toMatch(/build-sheet\.pdf$/)
    expect(await readFile(taken?.path ?? '')).toEqual(Buffer.from(bytes))
    await expect(readFile(refused?.path ?? '')).rejects.toThrow('ENOENT')
    await rm(dirname(taken?.path ?? ''), { recursive: true })
  })
})

describe('another start of the program', () => {
  const first = [...process.argv]
  afterEach(() => {
    onlyRun = true
    process.argv = first
  })

  it('ends at once where one runs already: no window, no file touched', async () => {
    calls.length = 0
    vi.resetModules()
    onlyRun = false
    await import('../../../main/index')
    const after = calls.map(({ name }) => name)
    expect(after.filter((name) => name === 'quit')).toHaveLength(1)
    for (const never of ['whenReady', 'window', 'ipc.handle', 'app.on']) expect(after).not.toContain(never)
  })

  it('that is the only one opens the design it was given', async () => {
    const path = join(home, 'clicked.sillwright')
    await writeFile(path, 'clicked')
    calls.length = 0
    vi.resetModules()
    process.argv = ['sillwright', '--flag', path]
    await import('../../../main/index')
    await vi.waitFor(() => expect(named('window.on').map(({ args }) => args[0])).toContain('closed'))
    await handed<(sender: unknown, payload: unknown) => Promise<unknown>>('ipc.handle', 1, 'window:ready')(page, null)
    await vi.waitFor(() =>
      expect(named('send')).toMatchObject([{ args: ['shell:event', { kind: 'opened', file: { text: 'clicked' } }] }])
    )
  })
})

describe('the menu', () => {
  const acts = { command: record('command'), newWindow: record('newWindow'), openRecent: record('openRecent') }

  it('lists the designs last used where the platform keeps no such list, and opens the one chosen', async () => {
    const { menuTemplate } = await import('../../../main/shell/menu')
    const file = menuTemplate('linux', ['/sills/herbs & greens.json'], acts)[0]?.submenu
    const recent = Array.isArray(file) ? file.find(({ label }) => label === 'Open recent') : undefined
    const [entry] = Array.isArray(recent?.submenu) ? recent.submenu : []
    expect(entry?.label).toBe('herbs && greens.json')
    Reflect.apply(entry?.click ?? (() => undefined), undefined, [])
    expect(named('openRecent')[0]?.args).toEqual(['/sills/herbs & greens.json'])
    expect(JSON.stringify(menuTemplate('darwin', ['/sills/a.json'], acts))).toContain('"role":"recentDocuments"')
  })

  it('sends a command by its name', async () => {
    const { menuTemplate } = await import('../../../main/shell/menu')
    const file = menuTemplate('win32', [], acts)[0]?.submenu
    const print = Array.isArray(file) ? file.find(({ accelerator }) => accelerator === 'CmdOrCtrl+P') : undefined
    Reflect.apply(print?.click ?? (() => undefined), undefined, [])
    expect(named('command')[0]?.args).toEqual(['print'])
  })
})

describe('the page’s own scheme', () => {
  it('answers with the policy headers, and only for its own host and folder', async () => {
    const { answerPage } = await import('../../../main/shell/page-scheme')
    const folder = await mkdtemp(join(tmpdir(), 'sillwright-scheme-'))
    await writeFile(join(folder, 'index.html'), 'page')
    const answer = answerPage(folder)
    const page = await answer({ url: 'app://bundle/index.html', method: 'GET' })
    expect([page.status, await page.text(), page.headers.get('content-type')]).toEqual([
      200,
      'page',
      'text/html; charset=utf-8'
    ])
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'")
    expect((await answer({ url: 'app://elsewhere/index.html', method: 'GET' })).status).toBe(403)
    expect((await answer({ url: 'app://bundle/index.html', method: 'POST' })).status).toBe(405)
    expect((await answer({ url: 'app://bundle/..%2f..%2fetc/passwd', method: 'GET' })).status).toBe(404)
    await rm(folder, { recursive: true })
  })
})
