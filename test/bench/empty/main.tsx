import { createRoot } from 'react-dom/client'
import { App } from '../../../renderer/App'
import { keepRecovery } from '../../../renderer/documents/keep-recovery'
import { offerRecovery } from '../../../renderer/documents/offer-recovery'
import { documents } from '../../../renderer/documents/open-documents'
import { chooseHost } from '../../../renderer/host/choose-host'
import { createPlanStore } from '../../../renderer/plan/plan-store'
import { heavyWorker } from '../../../renderer/plan/plan-worker-client'
import { createAppStore } from '../../../renderer/store/store'
import { parseDesignText } from '../../../shared-model/design'

/** All that the program's own page loads, held so that the bundler keeps it. */
Object.assign(globalThis, {
  held: [App, keepRecovery, offerRecovery, documents, chooseHost, createPlanStore, heavyWorker, createAppStore]
})

/** An empty page of the same bundle: it reads the file it is opened with, or is given by hand, and shows one word. */
const place = document.getElementById('root')
if (place === null) throw new Error('the page has no place')
const root = createRoot(place)
root.render(<input type="file" aria-label="File" onChange={(event) => void chosen(event.target.files?.[0])} />)
window.sillwright?.listen((event) => {
  if (event.kind === 'opened') read(event.file.text)
})
void window.sillwright?.send('window:ready', null)

async function chosen(file: File | undefined): Promise<void> {
  if (file !== undefined) read(await file.text())
}

function read(text: string): void {
  root.render(<p>{parseDesignText(text).ok ? 'Read' : 'Not read'}</p>)
}
