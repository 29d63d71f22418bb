import { type Services, ServicesContext } from './documents/use-documents'
import { Frame } from './frame/Frame'
import type { PlanStore } from './plan/plan-store'
import { PlanContext } from './plan/use-plan'
import type { AppStore } from './store/store'
import { StoreContext } from './store/use-app'

export interface AppProps {
  readonly store: AppStore
  readonly plan: PlanStore
  readonly services: Services
}

/** The window with its store, its plan and its services. */
export function App({ store, plan, services }: AppProps) {
  return (
    <StoreContext.Provider value={store}>
      <PlanContext.Provider value={plan}>
        <ServicesContext.Provider value={services}>
          <Frame />
        </ServicesContext.Provider>
      </PlanContext.Provider>
    </StoreContext.Provider>
  )
}
