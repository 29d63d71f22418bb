import { createRoot } from 'react-dom/client'
import { newDesign, parseWorkshopText } from '../shared-model/design'
import { App } from './App'
import { firstWorkshop } from './catalogue/first-workshop'
import { keepRecovery } from './documents/keep-recovery'
import { offerRecovery } from './documents/offer-recovery'
import { documents } from './documents/open-documents'
import { isAnswer, OVERWRITE, UNSAVED } from './documents/questions'
import { ask } from './frame/ask'
import { chooseHost } from './host/choose-host'
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
  const host = chooseHost()
  const kept = await host.readWorkshop()
  const parsed = kept === null ? null : parseWorkshopText(kept)
  const workshop = parsed?.ok === true ? parsed.value : firstWorkshop()
  const store = createAppStore({ design: newDesign(crypto.randomUUID()), workshop }, today())
  const plan = createPlanStore(store, heavyWorker())
  const services = {
    host,
    paper: heavyWorker(),
    batches: heavyWorker(),
    documents: documents(
      store,
      host,
      async () => {
        const answer = await ask(UNSAVED)
        return isAnswer(answer) ? answer : 'cancel'
      },
      async (name) => (await ask(OVERWRITE(name))) === 'over'
    )
  }
  keepRecovery(store, host)
  const place = document.getElementById('root')
  if (place === null) throw new Error('the page has no place for the window')
  createRoot(place).render(<App store={store} plan={plan} services={services} />)
  await offerRecovery(store, host)
}

void open()
