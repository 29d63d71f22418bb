// Two files that know each other, and a library that the model has no business with.
import { readFileSync } from 'node:fs'
import { other } from './other'
export const bill = [readFileSync, other]
