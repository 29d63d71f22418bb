import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    // The runner itself leaves a core idle.
    maxWorkers: '100%',
    exclude: ['test/screens/**', 'test/desktop/**', 'node_modules/**'],
    // A hang is still seen; a machine that is busy with something else is no fault of the program.
    testTimeout: 900_000,
    hookTimeout: 900_000
  }
})
