import { createContext, useContext } from 'react'
import type { Host } from '../host/host'
import type { LadderWorker } from '../plan/ladder-worker-client'
import type { HeavyWorker } from '../plan/plan-worker-client'
import type { Documents } from './open-documents'

export interface Services {
  readonly host: Host
  readonly documents: Documents
  readonly paper: HeavyWorker
  /** Works out the ladder of batch sizes. */
  readonly batches: LadderWorker
}

export const ServicesContext = createContext<Services | null>(null)

export function useServices(): Services {
  const services = useContext(ServicesContext)
  if (services === null) throw new Error('a part of the window stands outside its services')
  return services
}
