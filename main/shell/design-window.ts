import { join } from 'node:path'
import { BrowserWindow, screen } from 'electron'
import { electronDesktop } from './electron-desktop'
import { type FileDesk, fileDesk, type Premises } from './file-desk'
import { APP_ADDRESS } from './trusted-sender'
import { windowOptions } from './window-options'
import { placeOn, readPlace, writePlace } from './window-place'

export interface DesignWindow {
  readonly number: number
  readonly window: BrowserWindow
  readonly desk: FileDesk
}

/** A page that dies again sooner than this would die again at once: it is left for the person to close. */
const STEADY_MS = 10_000

/** A window on the page, where the last one stood, numbered from 1. A page that dies is loaded again and offers its work. */
export async function designWindow(
  number: number,
  premises: Premises,
  recentChanged: (path: string) => void
): Promise<DesignWindow> {
  const placeFile = join(premises.home, 'window.json')
  const displays = screen.getAllDisplays().map(({ workArea }) => workArea)
  const place = placeOn(displays, await readPlace(placeFile), number)
  const window = new BrowserWindow(windowOptions(join(import.meta.dirname, '../preload/preload.cjs'), place))
  const desk = fileDesk(electronDesktop(window, recentChanged), premises, number)
  let diedAt = 0
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit' || Date.now() - diedAt < STEADY_MS) return
    diedAt = Date.now()
    window.webContents.reload()
  })
  window.on('close', () => {
    void writePlace(placeFile, { ...window.getNormalBounds(), maximized: window.isMaximized() })
  })
  window.once('ready-to-show', () => {
    if (place.maximized === true) window.maximize()
    window.show()
  })
  void window.loadURL(APP_ADDRESS)
  return { number, window, desk }
}
