import { useMemo } from 'react'
import { useApp } from '../../../store/use-app'
import type { RowsFor } from './row-table'

export function useRowsFor(): RowsFor {
  const shows = useApp((state) => state.workshop.shows)
  const currency = useApp((state) => state.workshop.currency)
  const today = useApp((state) => state.on)
  return useMemo(() => ({ shows, currency, today }), [shows, currency, today])
}
