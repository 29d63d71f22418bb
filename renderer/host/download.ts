import { pacing } from './pacing'

/** Chromium takes ten downloads of a page in a second and drops the next without a word. */
const turn = pacing(120)

/** Hands bytes to the browser's own download. */
export async function download(name: string, mime: string, bytes: BlobPart): Promise<void> {
  await turn()
  const address = URL.createObjectURL(new Blob([bytes], { type: mime }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

/** Asks for a file where the browser has no file access of its own; null when the person gives up. */
export function askForFile(accept: string): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null))
    input.addEventListener('cancel', () => resolve(null))
    input.click()
  })
}
