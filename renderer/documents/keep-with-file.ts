import { type Edited, printWorkshop } from '../../shared-model/design'
import { ok } from '../../shared-model/outcome'
import { isDemoWorkshop } from '../frame/demo-choices'
import type { Host, HostProblem, SavedRef } from '../host/host'
import { problemText } from '../plan/wording'
import type { Pair } from '../store/history'
import type { AppStore } from '../store/store'

export type Written = (
  wish: Parameters<Host['save']>[0]
) => Promise<{ readonly ok: true; readonly value: SavedRef } | { readonly ok: false; readonly problem: HostProblem }>

/**
 * Makes a change that stands for something done at the bench: the workshop is written where it is kept, and only then is the
 * change made here. Where it cannot be written nothing of it happens, and why is given back; null: it is done.
 */
export async function keptWithFile(
  store: AppStore,
  host: Pick<Host, 'keepWorkshop'>,
  written: Written,
  why: (problem: HostProblem) => string,
  what: string,
  change: (pair: Pair) => Edited<Pair>
): Promise<string | null> {
  const { design, workshop, files } = store.getState()
  const made = change({ design, workshop })
  if (!made.ok) return problemText(made.problem, workshop.shows)
  const text = printWorkshop(made.value.workshop)
  const make = (): string | null => {
    const problem = store.do.edit(what, (now) =>
      now.design === design && now.workshop === workshop ? ok(made.value) : change(now)
    )
    return problem === null ? null : problemText(problem, workshop.shows)
  }
  if (files.workshopFile === null) {
    const isKept = isDemoWorkshop(workshop.id) || (await host.keepWorkshop(text).catch(() => false))
    return isKept ? make() : 'The workshop could not be kept on this machine, so nothing is changed.'
  }
  const saved = await written({ kind: 'workshop', file: files.workshopFile, name: files.workshopFile.name, text })
  if (!saved.ok) return `${why(saved.problem)} The workshop was not saved, so nothing is changed.`.trim()
  const said = make()
  if (said === null)
    store.do.setFiles({
      workshopFile: { id: saved.value.id, name: saved.value.name },
      savedWorkshop: made.value.workshop
    })
  return said
}
