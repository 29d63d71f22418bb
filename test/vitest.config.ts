import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    exclude: ['test/screens/**', 'test/desktop/**', 'node_modules/**'],
    testTimeout: 60_000
  }
})
