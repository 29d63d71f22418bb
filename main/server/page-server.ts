import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { pageFile } from './page-file'
import { PAGE_HEADERS } from './page-policy'

/** Fixed, so that the browser finds its storage again. */
export const PAGE_PORT = 47615

export interface RunningPage {
  readonly address: string
  /** False when the fixed port was taken and a free one is used. */
  readonly usualPort: boolean
  readonly close: () => Promise<void>
}

/** Serves the built page on 127.0.0.1 only: GET and HEAD only, this host's name only, nothing above the folder. */
export async function startPageServer(folder: string, port = PAGE_PORT): Promise<RunningPage> {
  const server = createServer((request, response) => {
    void answer(folder, request, response)
  })
  const usualPort = await listen(server, port)
  const bound = server.address()
  if (bound === null || typeof bound === 'string') throw new Error('the page server has no port')
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    usualPort,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      })
  }
}

async function answer(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const local = request.socket.localPort
  const host = request.headers.host
  if (host !== `127.0.0.1:${local}` && host !== `localhost:${local}`) return refuse(response, 403)
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405)
  const file = await pageFile(folder, (request.url ?? '/').split(/[?#]/, 1)[0] ?? '/')
  if (file === null) return refuse(response, 404)
  response.writeHead(200, {
    ...PAGE_HEADERS,
    'Content-Type': file.type,
    'Content-Length': file.bytes.byteLength,
    'Cache-Control': 'no-cache'
  })
  response.end(request.method === 'HEAD' ? undefined : file.bytes)
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status, { ...PAGE_HEADERS, 'Content-Type': 'text/plain; charset=utf-8' })
  response.end()
}

/** True when the asked-for port was free; a port that is taken gives way to any free one. */
async function listen(server: Server, port: number): Promise<boolean> {
  if (await bind(server, port)) return true
  if (!(await bind(server, 0))) throw new Error('no port is free on 127.0.0.1')
  return false
}

function bind(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const onListening = (): void => settle(() => resolve(true))
    const onError = (error: NodeJS.ErrnoException): void =>
      settle(() => (error.code === 'EADDRINUSE' || error.code === 'EACCES' ? resolve(false) : reject(error)))
    const settle = (done: () => void): void => {
      server.off('listening', onListening).off('error', onError)
      done()
    }
    server.once('listening', onListening).once('error', onError)
    server.listen(port, '127.0.0.1')
  })
}
