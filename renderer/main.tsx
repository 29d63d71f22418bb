import './host/early-host'
import { createRoot } from 'react-dom/client'
import { App } from './App'
import { bareDesign } from './catalogue/bare-design'
import { startingWorkshop } from './documents/first-workshop'
import { keepRecovery } from './documents/keep-recovery'
import { offerRecovery } from './documents/offer-recovery'
import { documents } from './documents/open-documents'
import { isAnswer, OVERWRITE, UNSAVED } from './documents/questions'
import { afterPaint } from './drawing/after-paint'
import { ask } from './frame/ask'
import { host } from './host/early-host'
import { ladderWorker } from './plan/ladder-worker-client'
import { createPlanStore } from './plan/plan-store'
import { heavyWorker } from './plan/plan-worker-client'
import { createAppStore } from './store/store'
import './styles/index.css'

const today = (): string => {
  const now = new Date()
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

async function open(): Promise<void> {
  const [{ workshop, readOnly, says }, given] = await Promise.all([startingWorkshop(host), host.fileAtStart()])
  const store = createAppStore({ design: bareDesign(workshop), workshop }, today())
  store.do.setFiles({ workshopReadOnly: readOnly })
  if (says !== null) store.do.look({ notice: { text: says } })
  const opened = documents(
    store,
    host,
    async () => {
      const answer = await ask(UNSAVED)
      return isAnswer(answer) ? answer : 'cancel'
    },
    async (name) => (await ask(OVERWRITE(name))) === 'over'
  )
  keepRecovery(store, host)
  if (given !== null) await opened.take(given)
  const plan = createPlanStore(store, heavyWorker(), afterPaint)
  const services = { host, paper: heavyWorker(), batches: ladderWorker(), documents: opened }
  const place = document.getElementById('root')
  if (place === null) throw new Error('the page has no place for the window')
  createRoot(place).render(<App store={store} plan={plan} services={services} />)
  await offerRecovery(store, host)
}

void open()
