import { readFileSync } from 'node:fs'

/** Documents of every schema ever written, kept as they were written. */
export const corpus = (name: string): string => readFileSync(new URL(`./corpus/${name}`, import.meta.url), 'utf8')
