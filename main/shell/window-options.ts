import type { BrowserWindowConstructorOptions } from 'electron'
import { LEAST_SIZE, type WindowPlace } from './window-place'

/** The window: sandboxed, isolated, no Node in the page, nothing shown before it is drawn. */
export function windowOptions(preload: string, place: Partial<WindowPlace> = {}): BrowserWindowConstructorOptions {
  const { maximized: _, ...bounds } = place
  return {
    ...bounds,
    minWidth: LEAST_SIZE.width,
    minHeight: LEAST_SIZE.height,
    show: false,
    backgroundColor: '#f6f4ef',
    title: 'Sillwright',
    webPreferences: {
      preload,
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
    }
  }
}
