import { parseWorkshopText, type Workshop } from '../../shared-model/design'
import { firstWorkshop } from '../catalogue/first-workshop'
import type { Host } from '../host/host'
import { isNewer, readNewerWorkshop } from './read-newer'

export interface StartingWorkshop {
  readonly workshop: Workshop
  readonly readOnly: boolean
  /** What the person must know of it; null where there is nothing to say. */
  readonly says: string | null
}

/** The workshop this machine keeps, as far as it can be used; what cannot is never written over. */
export async function startingWorkshop(host: Host): Promise<StartingWorkshop> {
  const kept = await host.readWorkshop().catch(() => undefined)
  if (kept === undefined) return { workshop: firstWorkshop(), readOnly: true, says: UNKNOWN }
  if (kept === null) return { workshop: firstWorkshop(), readOnly: false, says: null }
  const parsed = parseWorkshopText(kept)
  if (parsed.ok) return { workshop: parsed.value, readOnly: false, says: null }
  const newer = readNewerWorkshop(kept, parsed.problem)
  if (newer !== null || isNewer(parsed.problem))
    return { workshop: newer ?? firstWorkshop(), readOnly: true, says: NEWER }
  await host.setAside(kept)
  return { workshop: firstWorkshop(), readOnly: false, says: ASIDE }
}

const UNKNOWN =
  'Whether a workshop is kept on this machine could not be told. The one shown is a first one, for reading only, so that nothing is written over: close the program and start it again, or open your workshop file.'
const NEWER =
  'The workshop kept on this machine was written by a newer version of the program. It is open for reading only and stays as it is; save a copy, and the copy can be changed.'
const ASIDE =
  'The workshop kept on this machine cannot be read. It was set aside as it is, and a new one begun. Open your workshop file if you have one.'
