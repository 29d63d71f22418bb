import { readFileSync } from 'node:fs'
import { type ReadInstance, readInstance } from '../../main/commands/cutting-instance'

/** Textbook, shortened and invented cutting instances; each line names its source. */
export const referenceCases = (file: string): ReadInstance[] =>
  readFileSync(new URL(`../reference/cutting/${file}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => {
      const read = readInstance(line)
      if (typeof read === 'string') throw new Error(`${file}: ${read}`)
      return read
    })
