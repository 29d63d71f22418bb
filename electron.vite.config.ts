import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'

const at = (...parts: string[]) => resolve(import.meta.dirname, ...parts)

export default defineConfig({
  main: {
    build: { externalizeDeps: false, rolldownOptions: { input: { index: at('main/index.ts') } } }
  },
  preload: {
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
    plugins: [react()],
    worker: { format: 'es' },
    build: { rolldownOptions: { input: { index: at('renderer/index.html') } }, minify: true }
  }
})
