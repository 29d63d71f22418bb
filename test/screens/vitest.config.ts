import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['test/screens/**/*.screen.ts'],
    // Pictures for the documents are taken only when they are asked for.
    exclude: process.env.SILLWRIGHT_PICTURES === undefined ? ['test/screens/pictures.screen.ts'] : [],
    testTimeout: 900_000,
    hookTimeout: 300_000,
    // A busy machine shows a saved file or a new plan in this time at the latest.
    expect: { poll: { timeout: 120_000 } },
    // One browser for all files: two cores do not draw two boards faster.
    fileParallelism: false
  }
})
