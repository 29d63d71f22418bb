import type { Session, WebContents } from 'electron'
import { ownAddress } from './trusted-sender'

/** Denies by default: permissions in request, check and device form, downloads, and every address but the page's own. */
export function guardSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
  session.setDisplayMediaRequestHandler((_request, give) => give({}))
  session.on('will-download', (event) => event.preventDefault())
  session.webRequest.onBeforeRequest((details, decide) => decide({ cancel: !allowed(details.url) }))
}

/** Denies navigation away in any frame, redirects, new windows and webviews. */
export function guardContents(contents: WebContents): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  contents.on('will-navigate', (event) => {
    if (!ownAddress(event.url)) event.preventDefault()
  })
  contents.on('will-frame-navigate', (event) => {
    if (!ownAddress(event.url) && !ownBlob(event.url)) event.preventDefault()
  })
  contents.on('will-redirect', (event) => event.preventDefault())
  contents.on('will-attach-webview', (event) => event.preventDefault())
}

/** The page, and the blobs and data it makes itself; the developer tools while a build is looked at. */
function allowed(address: string): boolean {
  return ownAddress(address) || ownBlob(address) || /^(data:|devtools:)/.test(address)
}

const ownBlob = (address: string): boolean => address.startsWith('blob:app://bundle/')
