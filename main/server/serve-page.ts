import { openInBrowser } from './open-in-browser'
import { PAGE_PORT, startPageServer } from './page-server'

/** Serves the built page until Ctrl-C and says in a line why and where. */
export async function servePage(wish: {
  readonly folder: string
  readonly why: string
  readonly open: boolean
}): Promise<void> {
  const page = await startPageServer(wish.folder)
  const stop = (): void => {
    void page.close().then(() => process.exit(0))
  }
  process.once('SIGINT', stop)
  process.once('SIGTERM', stop)
  const opened = wish.open && (await openInBrowser(page.address))
  console.log(`${wish.why}: ${opened ? 'opened in the browser' : 'open this address in a browser'}: ${page.address}`)
  if (!page.usualPort) console.log(OTHER_PORT)
  console.log('Stop with Ctrl-C.')
}

/** A browser keeps what it keeps for an address by its port. */
const OTHER_PORT = `Another program holds port ${PAGE_PORT}, so a free one is used: unsaved work that was kept earlier is at http://127.0.0.1:${PAGE_PORT}/ and not here.`
