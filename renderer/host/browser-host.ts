import { browserFiles } from './browser-files'
import { browserRecovery } from './browser-recovery'
import { download } from './download'
import type { Host } from './host'
import { openKeptValues } from './kept-values'
import { tabLocks } from './tab-locks'

/** The page in a browser: files by the browser's own file access or by download, recovery in its database. */
export function browserHost(): Host {
  const kept = openKeptValues('sillwright')
  const locks = tabLocks()
  const files = browserFiles(kept, locks)
  let unsaved = false
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault()
  })
  return {
    kind: 'browser',
    says:
      window.showSaveFilePicker === undefined
        ? 'Running in the browser. Saving downloads the file; work not yet saved is kept in this browser.'
        : 'Running in the browser. Files are saved where you choose; work not yet saved is kept in this browser.',
    ...files,
    writeOut: async (name, mime, bytes) => {
      await download(name, mime, bytes)
      return { ok: true, value: name }
    },
    printPdf: async (name, bytes) => {
      printFrame(new Blob([bytes], { type: 'application/pdf' }))
      return { ok: true, value: name }
    },
    ...browserRecovery(kept, locks),
    setUnsaved: (now) => {
      unsaved = now
    },
    close: () => {},
    onCommand: () => () => {},
    fileAtStart: () => Promise.resolve(null),
    onOpenedFile: () => () => {},
    onTrouble: () => () => {}
  }
}

/** Prints the file itself, in a frame of its own, so that the pages leave at their true size. */
function printFrame(pdf: Blob): void {
  const address = URL.createObjectURL(pdf)
  const frame = document.createElement('iframe')
  frame.className = 'hidden-text'
  frame.title = 'Pages being printed'
  frame.src = address
  frame.addEventListener('load', () => frame.contentWindow?.print())
  document.body.append(frame)
  window.addEventListener(
    'focus',
    () => {
      setTimeout(() => {
        frame.remove()
        URL.revokeObjectURL(address)
      }, 1000)
    },
    { once: true }
  )
}
