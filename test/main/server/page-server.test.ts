import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type RunningPage, startPageServer } from '../../../main/server/page-server'

let home = ''
let page: RunningPage
let port = 0

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'sillwright-page-'))
  const folder = join(home, 'page')
  await mkdir(join(folder, 'assets'), { recursive: true })
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>Sill</title>')
  await writeFile(join(folder, 'assets/a b.js'), 'export {}')
  await writeFile(join(folder, 'secret.key'), 'no')
  await writeFile(join(home, 'outside.html'), 'outside')
  await symlink(join(home, 'outside.html'), join(folder, 'link.html'))
  page = await startPageServer(folder, 0)
  port = Number(new URL(page.address).port)
})
afterAll(async () => {
  await page.close()
  await rm(home, { recursive: true })
})

interface Answer {
  readonly status: number
  readonly headers: Readonly<Record<string, unknown>>
  readonly body: string
}

/** A request with its path and host exactly as given: `fetch` would tidy them first. */
function ask(path: string, options: { method?: string; host?: string } = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const headers = { host: options.host ?? `127.0.0.1:${port}` }
    const asked = request({ host: '127.0.0.1', port, path, method: options.method ?? 'GET', headers }, (response) => {
      let body = ''
      response.setEncoding('utf8').on('data', (part: string) => {
        body += part
      })
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body }))
    })
    asked.on('error', reject).end()
  })
}

describe('the local page server', () => {
  it('gives the page with its policy', async () => {
    const answer = await ask('/')
    expect(answer.status).toBe(200)
    expect(answer.body).toContain('Sill')
    const policy = String(answer.headers['content-security-policy'])
    expect(policy).toContain("default-src 'none'")
    expect(policy).not.toContain("'unsafe-eval'")
    expect(policy).not.toContain('unsafe-inline')
    expect(answer.headers['x-content-type-options']).toBe('nosniff')
  })

  it('gives files whose names need escapes, and their type', async () => {
    const answer = await ask('/assets/a%20b.js?v=1')
    expect(answer.status).toBe(200)
    expect(answer.headers['content-type']).toBe('text/javascript; charset=utf-8')
  })

  it('listens on this machine only', () => {
    expect(page.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
  })

  it('refuses another host name, so that no foreign page can speak to it', async () => {
    expect((await ask('/', { host: 'sills.example' })).status).toBe(403)
    expect((await ask('/', { host: `sills.example:${port}` })).status).toBe(403)
    expect((await ask('/', { host: `localhost:${port}` })).status).toBe(200)
  })

  it('takes only GET and HEAD', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS']) expect((await ask('/', { method })).status).toBe(405)
    const head = await ask('/', { method: 'HEAD' })
    expect([head.status, head.body]).toEqual([200, ''])
  })

  it.each([
    '/../outside.html',
    '/%2e%2e/outside.html',
    '/..%2foutside.html',
    '/assets/../../outside.html',
    '/..\\outside.html',
    '/..%5coutside.html',
    '/%2e%2e%5Coutside.html',
    '/assets%2f..%2f..%2foutside.html',
    '/%252e%252e/outside.html',
    '/..%252foutside.html',
    '/%c0%ae%c0%ae/outside.html',
    '/.%00./outside.html',
    '/link.html'
  ])('gives nothing from above the page’s folder: %s', async (path) => {
    expect((await ask(path)).status).toBe(404)
  })

  it('gives nothing for a path that begins elsewhere, and takes an address with another host for none of its own', async () => {
    for (const path of [`//${home}/outside.html`, `/${encodeURIComponent(join(home, 'outside.html'))}`, '*'])
      expect((await ask(path)).status).toBe(404)
    expect((await ask(`http://sills.example/index.html`)).status).toBe(404)
  })

  it('sends the policy with every answer, refusals too, and none of them may be kept by another page', async () => {
    const answers = await Promise.all([
      ask('/'),
      ask('/assets/a%20b.js'),
      ask('/none.html'),
      ask('/', { method: 'HEAD' }),
      ask('/', { method: 'POST' }),
      ask('/', { host: 'sills.example' })
    ])
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 404, 200, 405, 403])
    for (const { headers } of answers) {
      expect(headers['content-security-policy']).toMatch(/^default-src 'none'; /)
      expect(headers['content-security-policy']).not.toMatch(/'unsafe-(eval|inline)'/)
      expect(headers['x-content-type-options']).toBe('nosniff')
      expect(headers['cross-origin-resource-policy']).toBe('same-origin')
      expect(headers['access-control-allow-origin']).toBeUndefined()
    }
  })

  it('refuses a request that names no host, or two', async () => {
    const raw = (text: string): Promise<string> =>
      new Promise((resolve, reject) => {
        let answer = ''
        const wire = connect(port, '127.0.0.1', () => wire.end(text))
        wire.setEncoding('utf8').on('data', (part: string) => {
          answer += part
        })
        wire.on('close', () => resolve(answer.split('\r\n', 1)[0] ?? '')).on('error', reject)
      })
    expect(await raw('GET / HTTP/1.1\r\n\r\n')).toMatch(/ 40[03] /)
    expect(await raw('GET / HTTP/1.0\r\n\r\n')).toMatch(/ 403 /)
    expect(await raw(`GET / HTTP/1.1\r\nHost: sills.example\r\nHost: 127.0.0.1:${port}\r\n\r\n`)).toMatch(/ 40[03] /)
  })

  it('gives nothing of a kind that is not part of a page, and no folder', async () => {
    for (const path of ['/secret.key', '/assets', '/assets/', '/%00.html', '/%E0%A4%A.html']) {
      expect((await ask(path)).status).toBe(404)
    }
  })

  it('takes a free port when the usual one is taken, and says so', async () => {
    const second = await startPageServer(join(home, 'page'), port)
    expect(second.usualPort).toBe(false)
    expect(second.address).not.toBe(page.address)
    await second.close()
  })
})
