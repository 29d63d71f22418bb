import { useMemo } from 'react'
import { buildSheet, SHEET_PARTS, type SheetData, type SheetPart } from '../../shared-model/sheet'
import { usePlanState } from '../plan/use-plan'
import { useApp } from '../store/use-app'

/**
 * Parts of the build sheet for the last full plan, as data. While the plan is behind the documents, the sheet of the
 * documents that it was for stays.
 */
export function useSheetParts(parts: readonly SheetPart[]): SheetData | null {
  const of = usePlanState((state) => state.fullOf)
  const key = parts.join()
  return useMemo(() => {
    if (of === null) return null
    return buildSheet(of.plan, of.design, of.workshop, {
      parts: SHEET_PARTS.filter((part) => key.split(',').includes(part))
    })
  }, [of, key])
}

/** Whether there is anything to build. */
export const useHasChannels = (): boolean => useApp((state) => state.design.channels.length > 0)
