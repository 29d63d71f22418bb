import type { SheetData } from '../../shared-model/sheet'
import { hostText } from '../documents/open-documents'
import { useServices } from '../documents/use-documents'
import { wasGivenUp } from '../plan/plan-worker-client'
import { useAppStore } from '../store/use-app'

/** Writes a small document in the worker and hands it to the host to print, or, in a browser, to show. */
export function usePrintSmall(): (name: string, sheet: SheetData) => Promise<void> {
  const { host, paper } = useServices()
  const store = useAppStore()
  return async (name, sheet) => {
    const tell = (text: string): void => store.do.look({ notice: { text } })
    try {
      const { pdf } = await paper.pages(sheet, store.getState().workshop.shows.paper)
      const result = await host.printPdf(name, pdf)
      if (!result.ok && result.problem.code !== 'given-up') tell(hostText(result.problem))
    } catch (error) {
      if (!wasGivenUp(error))
        tell(`It could not be written: ${error instanceof Error ? error.message : String(error)}.`)
    }
  }
}
