import { useMemo } from 'react'
import { useApp } from '../store/use-app'
import { type Offered, offered } from './offered'

/** The parts to choose from, for the documents as they are now. */
export function useOffered(): Offered {
  const design = useApp((state) => state.design)
  const workshop = useApp((state) => state.workshop)
  return useMemo(() => offered(design, workshop), [design, workshop])
}
