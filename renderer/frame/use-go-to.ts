import type { Where } from '../../shared-model/outcome'
import { chooseChannel, chooseOpening, chooseSite, NOTHING } from '../store/selection'
import { useAppStore } from '../store/use-app'
import type { Screen } from '../store/view'
import { reachField } from './reach-field'

const WORKSHOP_FIELDS =
  /^(saws|drills|cutting|stock|rack|sheet|sheets|sheetSetup|offers|shelf|times|shows|currency|workshop|parts)/

/** Takes the hand to what a finding is about: chooses it on the board and puts the focus in the field that clears it. */
export function useGoTo(): (where: Where) => void {
  const store = useAppStore()
  return (where) => {
    const { channelId, siteId, openingId, partId } = where
    const field = where.field === 'parts' && partId !== undefined ? `parts.${partId}` : where.field
    const screen: Screen =
      field?.startsWith('pricing') === true
        ? 'price'
        : field !== undefined && WORKSHOP_FIELDS.test(field)
          ? 'workshop'
          : 'board'
    if (screen === 'board') {
      const chosen =
        channelId === undefined
          ? NOTHING
          : siteId === undefined
            ? openingId === undefined
              ? chooseChannel(channelId)
              : chooseOpening(channelId, openingId)
            : chooseSite(channelId, siteId)
      store.do.select(chosen)
    }
    store.do.look({ screen, started: true })
    if (field !== undefined) reachField(field)
  }
}
