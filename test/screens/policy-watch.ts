import type { BrowserContext } from 'playwright-core'

/**
 * A worker's policy violations are events in the worker alone, and the first of them could come while its modules are
 * still being taken in. So every script is served with this at its head: the first one that runs sets the listener.
 */
const LISTENER = `
if (typeof WorkerGlobalScope !== 'undefined' && globalThis.policyWatched !== true) {
  globalThis.policyWatched = true
  addEventListener('securitypolicyviolation', (event) =>
    console.error('Content Security Policy, in a worker: ' + event.violatedDirective + ' ' + event.blockedURI))
}
`

/** Serves scripts with the listener at their head, headers as they are; `inWorker` runs at the head of the plan worker. */
export async function watchPolicy(context: BrowserContext, inWorker: string): Promise<void> {
  await context.route(/\.m?js$/, async (route) => {
    const response = await route.fetch()
    const isWorker = /\/plan-worker[^/]*\.js$/.test(route.request().url())
    await route.fulfill({ response, body: `${LISTENER}${isWorker ? inWorker : ''}${await response.text()}` })
  })
}
