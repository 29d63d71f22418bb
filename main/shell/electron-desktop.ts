import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserWindow, dialog, shell } from 'electron'
import { EVENT_CHANNEL } from '../bridge/contract'
import type { Desktop } from './ports'

const FILTERS = [{ name: 'Sillwright document', extensions: ['sillwright', 'json'] }]

/** The desktop as Electron gives it. A window with unsaved changes asks its page before it closes. */
export function electronDesktop(window: BrowserWindow, recentChanged: Desktop['recentChanged']): Desktop {
  let edited = false
  let closing = false
  const tell: Desktop['tell'] = (event) => window.webContents.send(EVENT_CHANNEL, event)
  window.on('close', (event) => {
    if (!edited || closing) return
    event.preventDefault()
    tell({ kind: 'close-asked' })
  })
  // A page that has died cannot be asked: the window may close, and the work is offered from its recovery.
  window.webContents.on('render-process-gone', () => {
    edited = false
  })
  return {
    askOpen: async () => {
      const asked = await dialog.showOpenDialog(window, { properties: ['openFile'], filters: FILTERS })
      return asked.filePaths[0] ?? null
    },
    askSave: async (suggestedName) => {
      const asked = await dialog.showSaveDialog(window, { defaultPath: suggestedName })
      return asked.canceled || asked.filePath === '' ? null : asked.filePath
    },
    printPdf,
    setWindow: (title, isEdited) => {
      edited = isEdited
      window.setTitle(title)
      window.setDocumentEdited(isEdited)
    },
    closeWindow: () => {
      closing = true
      window.close()
    },
    tell,
    say: (message) => {
      void dialog.showMessageBox(window, { type: 'info', message, buttons: ['OK'] })
    },
    recentChanged,
    now: () => new Date()
  }
}

/** Hands the sheet to the system's PDF viewer, which prints at the size the file asks for. */
async function printPdf(bytes: Uint8Array): Promise<boolean> {
  const folder = await mkdtemp(join(tmpdir(), 'sillwright-print-'))
  const path = join(folder, 'build-sheet.pdf')
  await writeFile(path, bytes)
  const refused = await shell.openPath(path)
  if (refused !== '') await rm(folder, { recursive: true, force: true })
  return refused === ''
}
