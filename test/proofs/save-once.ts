import { saveDocument } from '../../main/files/save-document'

/** Run as a process of its own, where it may not write or not much: one save over a file, and what came of it. */
const [path = '', filler = '0'] = process.argv.slice(2)
const text = `{"schema":1,"filler":"${'x'.repeat(Number(filler))}"}`
process.stdout.write(JSON.stringify(await saveDocument(path, text, null, true, new Date())))
