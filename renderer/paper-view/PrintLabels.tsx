import { type Offcut, offcutLabels } from '../../shared-model/cutting'
import { useOffered } from '../catalogue/use-offered'
import { Icon } from '../icons/Icon'
import { usePlanState } from '../plan/use-plan'
import { useSay } from '../store/use-say'
import { smallSheet } from './small-sheet'
import { usePrintSmall } from './use-print-small'

interface PrintLabelsProps {
  readonly offcuts: readonly Offcut[]
  readonly label: string
}

/** Labels to cut out and stick on offcuts: what it is, how long, where and when it came from. */
export function PrintLabels({ offcuts, label }: PrintLabelsProps) {
  const of = usePlanState((state) => state.fullOf)
  const { profiles } = useOffered()
  const say = useSay()
  const print = usePrintSmall()
  if (of === null || offcuts.length === 0) return null
  const labels = offcutLabels(offcuts).map(({ offcutId, profileId, lengthMm, cameFrom, cameOn }) => ({
    title: `${offcutId}: ${say.length(lengthMm)}`,
    lines: [
      profiles.find(({ id }) => id === profileId)?.name ?? profileId,
      [cameFrom === '' ? '' : `From ${cameFrom}`, cameOn].filter((part) => part !== '').join(', ')
    ]
  }))
  return (
    <button
      type="button"
      className="button"
      onClick={() => void print('offcut-labels', smallSheet(of, 'Offcut labels', [{ kind: 'labels', labels }]))}
    >
      <Icon name="print" />
      {label}
    </button>
  )
}
