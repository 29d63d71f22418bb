import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'
import { writeHeldPackages } from './main/launch/held-packages.mjs'

const at = (...parts: string[]) => resolve(import.meta.dirname, ...parts)

const held = writeHeldPackages()

export default defineConfig({
  main: {
    plugins: [held],
    build: { externalizeDeps: false, rolldownOptions: { input: { index: at('main/index.ts') } } }
  },
  preload: {
    plugins: [held],
    // A sandboxed preload must be one CommonJS file.
    build: {
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: at('main/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' }
      }
    }
  },
  renderer: {
    root: at('renderer'),
    plugins: [react(), held],
    worker: { format: 'es', plugins: () => [held] },
    build: { rolldownOptions: { input: { index: at('renderer/index.html') } }, minify: true }
  }
})
