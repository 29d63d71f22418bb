import { browserHost } from './browser-host'
import { desktopHost } from './desktop-host'
import type { Host } from './host'

/** The desktop's host where the preload has put its bridge on the window, else the browser's. */
export const chooseHost = (): Host => (window.sillwright === undefined ? browserHost() : desktopHost(window.sillwright))
