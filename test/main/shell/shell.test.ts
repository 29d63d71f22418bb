import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'

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

vi.mock('electron', () => {
  class FakeWindow {
    webContents = { send: record('send'), once: record('contents.once') }
    constructor(options: unknown) {
      record('window')(options)
    }
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
      requestSingleInstanceLock: () => true,
      quit: record('quit'),
      on: record('app.on'),
      getPath: () => '/home/of/the/program',
      whenReady: () => {
        record('whenReady')()
        return Promise.resolve()
      }
    },
    BrowserWindow: FakeWindow,
    dialog: {},
    shell: {},
    ipcMain: { handle: record('ipc.handle') },
    Menu: { setApplicationMenu: record('menu'), buildFromTemplate: (template: unknown) => template },
    protocol: { registerSchemesAsPrivileged: record('scheme'), handle: record('protocol.handle') },
    session: {
      defaultSession: {
        setPermissionRequestHandler: record('permission.request'),
        setPermissionCheckHandler: record('permission.check'),
        setDevicePermissionHandler: record('permission.device'),
        on: record('session.on'),
        webRequest: { onBeforeRequest: record('onBeforeRequest') }
      }
    }
  }
})

beforeEach(async () => {
  calls.length = 0
  vi.resetModules()
  await import('../../../main/index')
  await Promise.resolve()
})

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
  })

  it('asks the page before a window with unsaved changes closes', async () => {
    const event = { preventDefault: vi.fn() }
    const closing = handed<(e: typeof event) => void>('window.on', 1, 'close')
    closing(event)
    expect(event.preventDefault).not.toHaveBeenCalled()
    const state = handed<(sender: unknown, payload: unknown) => Promise<unknown>>('ipc.handle', 1, 'window:state')
    await state({ senderFrame: { url: 'app://bundle/index.html', parent: null } }, { title: 'Kitchen', edited: true })
    closing(event)
    expect(event.preventDefault).toHaveBeenCalledOnce()
    expect(named('send')).toMatchObject([{ args: ['shell:event', { kind: 'close-asked' }] }])
    expect(named('setTitle')[0]?.args).toEqual(['Kitchen'])
  })

  it('gives the menu the platform’s own roles', () => {
    const text = JSON.stringify(named('menu')[0]?.args[0])
    for (const role of ['cut', 'copy', 'paste', 'selectAll', 'togglefullscreen', 'windowMenu', 'recentDocuments']) {
      expect(text).toContain(`"role":"${role}"`)
    }
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
