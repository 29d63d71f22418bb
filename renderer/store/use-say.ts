import { useMemo } from 'react'
import { type Say, sayIn } from '../../shared-model/words'
import { useApp } from './use-app'

/** How this workshop says its figures: its units, its graduation, its money. */
export function useSay(): Say {
  const shows = useApp((state) => state.workshop.shows)
  const currency = useApp((state) => state.workshop.currency)
  return useMemo(() => sayIn(shows, currency), [shows, currency])
}
