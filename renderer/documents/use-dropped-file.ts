import { useEffect } from 'react'
import { MOST_FILE_BYTES, type OpenedFile } from '../host/host'
import { hostText } from './open-documents'

/**
 * A design file dropped anywhere on the window is opened, as if it had been chosen. Only its name and text come with it, not
 * its place: saving it asks where. Whatever else is dragged is left to what it is dragged onto.
 */
export function useDroppedFile(take: (file: OpenedFile) => Promise<void>, tell: (text: string) => void): void {
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer === null || !event.dataTransfer.types.includes('Files')) return
      event.preventDefault()
      event.dataTransfer.dropEffect = 'copy'
    }
    const drop = (event: DragEvent): void => {
      if (event.dataTransfer === null || !event.dataTransfer.types.includes('Files')) return
      event.preventDefault()
      const { files } = event.dataTransfer
      const [file] = files
      if (file === undefined) return
      if (files.length > 1) tell(`${files.length} files were dropped. One design is opened at a time.`)
      else void opened(file).then((given) => (typeof given === 'string' ? tell(given) : take(given)))
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [take, tell])
}

/** The file with its text, or words that say why it was not read: a folder is dropped like a file and cannot be. */
async function opened(file: File): Promise<OpenedFile | string> {
  const { name } = file
  if (file.size > MOST_FILE_BYTES) return hostText({ code: 'file-too-large', name, mostBytes: MOST_FILE_BYTES })
  try {
    return { file: { id: '', name }, text: await file.text() }
  } catch {
    return hostText({ code: 'file-failed', name, detail: 'it cannot be read' })
  }
}
