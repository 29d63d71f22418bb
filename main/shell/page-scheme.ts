import { pageFile } from '../server/page-file'
import { PAGE_HEADERS } from '../server/page-policy'
import { APP_SCHEME, ownAddress } from './trusted-sender'

/** The page's own scheme: registered once, at the top level of the main file, before the app is ready. */
export const PAGE_SCHEME = {
  scheme: APP_SCHEME,
  privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true }
}

/** Answers the page's requests from its folder, every response with the policy headers. */
export function answerPage(
  folder: string
): (request: { readonly url: string; readonly method: string }) => Promise<Response> {
  return async (request) => {
    if (!ownAddress(request.url)) return new Response(null, { status: 403, headers: PAGE_HEADERS })
    if (request.method !== 'GET') return new Response(null, { status: 405, headers: PAGE_HEADERS })
    const file = await pageFile(folder, new URL(request.url).pathname)
    if (file === null) return new Response(null, { status: 404, headers: PAGE_HEADERS })
    return new Response(Buffer.from(file.bytes), { headers: { ...PAGE_HEADERS, 'Content-Type': file.type } })
  }
}
