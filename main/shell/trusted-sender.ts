import type { SenderEvent } from './ports'

export const APP_SCHEME = 'app'
export const APP_HOST = 'bundle'
export const APP_ADDRESS = `${APP_SCHEME}://${APP_HOST}/index.html`

/** Only the program's own page, in the top frame, may send messages. */
export function trustedSender(event: SenderEvent): boolean {
  const frame = event.senderFrame
  return frame !== null && frame.parent === null && ownAddress(frame.url)
}

/** True for an address of the program's own page. A custom scheme has no origin in Node: protocol and host are compared. */
export function ownAddress(address: string): boolean {
  const url = parseAddress(address)
  return url !== null && url.protocol === `${APP_SCHEME}:` && url.host === APP_HOST
}

function parseAddress(address: string): URL | null {
  try {
    return new URL(address)
  } catch {
    return null
  }
}
