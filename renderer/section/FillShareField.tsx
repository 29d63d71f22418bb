import { editChannels } from '../../shared-model/design'
import type { Channel } from '../../shared-model/layout'
import { NumberField } from '../fields/NumberField'
import { useEdit } from '../store/use-edit'

/** The fill line as a share of the inside height, typed. */
export function FillShareField({ channel }: { readonly channel: Channel }) {
  const edit = useEdit()
  return (
    <NumberField
      label="Fill to"
      unit="%"
      least={0}
      most={100}
      value={channel.fillShare * 100}
      commit={(percent) =>
        edit.design('change the fill', (design) => editChannels(design, [channel.id], { fillShare: percent / 100 }))
      }
    />
  )
}
