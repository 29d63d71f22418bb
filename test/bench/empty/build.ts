import { join, resolve } from 'node:path'

/** Builds the empty page beside the program's own, with the same settings; gives its folder. */
export async function buildEmptyPage(): Promise<string> {
  const { build } = await import('vite')
  const { default: react } = await import('@vitejs/plugin-react')
  const outDir = resolve('out/bench/empty')
  await build({
    configFile: false,
    root: resolve('test/bench/empty'),
    base: './',
    logLevel: 'warn',
    plugins: [react()],
    worker: { format: 'es' },
    build: {
      outDir,
      emptyOutDir: true,
      minify: true,
      rolldownOptions: { input: join(resolve('test/bench/empty'), 'index.html') }
    }
  })
  return outDir
}
