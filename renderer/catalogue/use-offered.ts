import { useMemo } from 'react'
import { useApp } from '../store/use-app'
import { type Offered, offered } from './offered'

/** The parts to choose from, for the documents as they are now. */
export function useOffered(): Offered {
  const parts = useApp((state) => state.design.parts)
  const crops = useApp((state) => state.design.crops)
  const workshop = useApp((state) => state.workshop)
  return useMemo(() => offered({ parts, crops }, workshop), [parts, crops, workshop])
}
