import { join } from 'node:path'
import { app, BrowserWindow, ipcMain, Menu, protocol, session } from 'electron'
import { documentArgument } from './files/document-argument'
import { electronDesktop } from './shell/electron-desktop'
import { fileDesk } from './shell/file-desk'
import { guardContents, guardSession } from './shell/guard-session'
import { menuTemplate } from './shell/menu'
import { answerPage, PAGE_SCHEME } from './shell/page-scheme'
import { registerMessages } from './shell/register-messages'
import { APP_ADDRESS } from './shell/trusted-sender'
import { windowOptions } from './shell/window-options'

// Once, before the app is ready, with nothing awaited before it.
protocol.registerSchemesAsPrivileged([PAGE_SCHEME])
app.enableSandbox()

if (app.requestSingleInstanceLock()) run()
else app.quit()

function run(): void {
  app.on('web-contents-created', (_event, contents) => guardContents(contents))
  app.on('window-all-closed', () => app.quit())
  void app.whenReady().then(openWindow)
}

function openWindow(): void {
  guardSession(session.defaultSession)
  protocol.handle(PAGE_SCHEME.scheme, answerPage(join(import.meta.dirname, '../renderer')))
  const window = new BrowserWindow(windowOptions(join(import.meta.dirname, '../preload/preload.cjs')))
  const desktop = electronDesktop(window)
  const desk = fileDesk(desktop, app.getPath('userData'))
  registerMessages(ipcMain, desk.handlers)
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(menuTemplate(process.platform, (command) => desktop.tell({ kind: 'menu', command })))
  )
  const open = (argv: readonly string[]): void => {
    const path = documentArgument(argv)
    if (path !== null) void desk.openPath(path)
  }
  app.on('second-instance', (_event, argv) => {
    if (window.isMinimized()) window.restore()
    window.focus()
    open(argv)
  })
  app.on('open-file', (event, path) => {
    event.preventDefault()
    open([path])
  })
  window.once('ready-to-show', () => window.show())
  window.webContents.once('did-finish-load', () => open(process.argv.slice(1)))
  void window.loadURL(APP_ADDRESS)
}
