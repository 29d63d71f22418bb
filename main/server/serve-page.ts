import { openInBrowser } from './open-in-browser'
import { startPageServer } from './page-server'

/** Serves the built page until Ctrl-C and says in a line why and where. */
export async function servePage(wish: {
  readonly folder: string
  readonly why: string
  readonly open: boolean
}): Promise<void> {
  const page = await startPageServer(wish.folder)
  const opened = wish.open && (await openInBrowser(page.address))
  console.log(`${wish.why}: ${opened ? 'opened in the browser' : 'open this address in a browser'}: ${page.address}`)
  if (!page.usualPort) console.log('Another copy holds the usual port: work recovered earlier is found at its address.')
  console.log('Stop with Ctrl-C.')
  const stop = (): void => {
    void page.close().then(() => process.exit(0))
  }
  process.once('SIGINT', stop)
  process.once('SIGTERM', stop)
}
