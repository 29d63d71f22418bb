import { join, resolve } from 'node:path'
import { app, BrowserWindow, ipcMain, Menu, protocol, session } from 'electron'
import { EVENT_CHANNEL, type ShellEvent } from './bridge/contract'
import { documentArgument } from './files/document-argument'
import { fileIds } from './files/file-ids'
import { heldFiles } from './files/held-files'
import { readRecent } from './files/recent-files'
import { recoveryIn } from './files/recovery'
import { windowsToRecover } from './files/recovery-slot'
import { type DesignWindow, designWindow } from './shell/design-window'
import { type Premises, recentListIn, recoveryFolderIn } from './shell/file-desk'
import { guardContents, guardSession } from './shell/guard-session'
import { menuTemplate } from './shell/menu'
import { answerPage, PAGE_SCHEME } from './shell/page-scheme'
import { registerMessages } from './shell/register-messages'
import { lowestFree, windowFor } from './shell/window-numbers'

// Once, before the app is ready, with nothing awaited before it.
protocol.registerSchemesAsPrivileged([PAGE_SCHEME])
app.enableSandbox()
// No name on any network can be looked up; requests are denied one by one besides.
app.commandLine.appendSwitch('host-resolver-rules', 'MAP * ~NOTFOUND')

/** Open windows by the number of their contents. */
const windows = new Map<number, DesignWindow>()
/** Numbers of windows that are open or about to be. */
const taken = new Set<number>()
/** Paths that the system handed over before there was a window: macOS does so before the app is ready. */
let early: string[] = []

if (app.requestSingleInstanceLock()) run()
else app.quit()

function run(): void {
  const premises: Premises = { home: app.getPath('userData'), ids: fileIds(), held: heldFiles() }
  app.on('web-contents-created', (_event, contents) => guardContents(contents))
  app.on('window-all-closed', () => app.quit())
  app.on('open-file', (event, path) => {
    event.preventDefault()
    openPath(premises, path)
  })
  app.on('second-instance', (_event, argv, folder) => {
    const path = documentArgument(argv.slice(1))
    if (path === null) front(windowFor(windows.values(), null))
    else openPath(premises, resolve(folder, path))
  })
  void app.whenReady().then(() => open(premises))
}

async function open(premises: Premises): Promise<void> {
  guardSession(session.defaultSession)
  protocol.handle(PAGE_SCHEME.scheme, answerPage(join(import.meta.dirname, '../renderer')))
  registerMessages(ipcMain, (contentsId) => windows.get(contentsId)?.desk.handlers ?? null)
  await showMenu(premises)
  for (const number of await windowsToRecover(recoveryIn(recoveryFolderIn(premises.home)))) {
    await addWindow(premises, number)
  }
  const given = documentArgument(process.argv.slice(1))
  const paths = given === null ? early : [...early, resolve(given)]
  early = []
  for (const path of paths) openPath(premises, path)
}

async function addWindow(premises: Premises, number: number): Promise<void> {
  taken.add(number)
  const made = await designWindow(number, premises, (path) => {
    app.addRecentDocument(path)
    void showMenu(premises)
  })
  const { id } = made.window.webContents
  windows.set(id, made)
  made.window.on('closed', () => {
    windows.delete(id)
    taken.delete(number)
    premises.held.release(number)
  })
}

/** Shows a design that the system names: in the window that has it open, else in the one in front. */
function openPath(premises: Premises, path: string): void {
  const holder = premises.held.holder(path)
  const target = windowFor(windows.values(), holder)
  if (target === null) {
    early.push(path)
    return
  }
  front(target)
  if (holder === null) void target.desk.openPath(path)
}

function front(target: DesignWindow | null): void {
  if (target === null) return
  if (target.window.isMinimized()) target.window.restore()
  target.window.focus()
}

async function showMenu(premises: Premises): Promise<void> {
  const recent = (await readRecent(recentListIn(premises.home))).filter(({ kind }) => kind === 'design')
  const acts = {
    command: (command: Parameters<Parameters<typeof menuTemplate>[2]['command']>[0]) => {
      BrowserWindow.getFocusedWindow()?.webContents.send(EVENT_CHANNEL, { kind: 'menu', command } satisfies ShellEvent)
    },
    newWindow: () => void addWindow(premises, lowestFree(taken)),
    openRecent: (path: string) => openPath(premises, path)
  }
  const paths = recent.map(({ path }) => path)
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, paths, acts)))
}
