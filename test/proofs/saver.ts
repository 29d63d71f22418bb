import { writeSync } from 'node:fs'
import { readDocument, stampOf } from '../../main/files/read-document'
import { saveDocument } from '../../main/files/save-document'
import { documentOf } from './numbered-document'

/**
 * Run as a process of its own and killed at a random moment: saves document after document over one file, each read from
 * the one before, and says the number of each once its save has been answered.
 */
const [path = '', first = '0'] = process.argv.slice(2)
const started = await readDocument(path)
if (!started.ok) throw new Error(`the file cannot be read: ${started.problem.code}`)
let stamp = started.value.stamp
say('ready')
for (let number = Number(first) + 1; ; number += 1) {
  const text = documentOf(number)
  const saved = await saveDocument(path, text, stamp, false, new Date())
  if (!saved.ok) throw new Error(`a save failed: ${saved.problem.code}`)
  stamp = stampOf(text)
  say(String(number))
}

/** At once and whole: a line that is still in a buffer would be lost with the process. */
function say(line: string): void {
  writeSync(1, `${line}\n`)
}
