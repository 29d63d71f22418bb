// `npm run bench`: the measured benchmarks, seeded; each row its minimum and median time and a checksum of what it made.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { buildDesktop } from '../../main/launch/build.mjs'
import { ensureInstalled, root } from '../../main/launch/install.mjs'
import { findBrowser } from './browser.mjs'

if (!ensureInstalled() || !buildDesktop()) process.exit(1)
const { build } = await import('rolldown')
const out = join(root, 'out', 'bench')
await build({
  input: { bench: join(root, 'test/bench/all.ts') },
  platform: 'node',
  external: [
    /^node:/,
    'highs',
    'pdfmake',
    /^pdfmake\//,
    'playwright-core',
    'fast-check',
    'vite',
    '@vitejs/plugin-react'
  ],
  logLevel: 'silent',
  output: { dir: out, format: 'esm', entryFileNames: '[name].mjs' }
})
process.env.SILLWRIGHT_BROWSER ??= (await findBrowser()) ?? ''
const { runBench } = await import(pathToFileURL(join(out, 'bench.mjs')).href)
process.exitCode = await runBench(process.argv.slice(2), process.env.SILLWRIGHT_SEED ?? '20261125')
