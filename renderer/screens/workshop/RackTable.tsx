import type { Offcut } from '../../../shared-model/cutting'
import { addOffcut, deleteFrom, editOffcut } from '../../../shared-model/design'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { MoneyField } from '../../fields/MoneyField'
import { TextField } from '../../fields/TextField'
import { Icon } from '../../icons/Icon'
import { PrintLabels } from '../../paper-view/PrintLabels'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { EditableTable } from './EditableTable'

/** Offcuts on hand; the plan uses them first where that is cheaper. */
export function RackTable() {
  const rack = useApp((state) => state.workshop.rack)
  const first = useApp((state) => state.design.channels[0]?.profileId)
  const today = useApp((state) => state.on)
  const edit = useEdit()
  const say = useSay()
  const { profiles } = useOffered()
  const profileId = first ?? profiles[0]?.id
  const set = (offcut: Offcut, changes: Parameters<typeof editOffcut>[2]): string | null =>
    edit.workshop('change an offcut', (workshop) => editOffcut(workshop, offcut.id, changes))
  return (
    <EditableTable
      list="rack"
      caption="Rack"
      says="Offcuts on hand. They are used first where that is cheaper."
      empty="Nothing on the rack."
      rows={rack}
      keyOf={(offcut) => offcut.id}
      nameOf={(offcut) => `the offcut of ${say.length(offcut.lengthMm)}`}
      remove={(offcut) =>
        edit.workshop('take an offcut off the rack', (workshop) => deleteFrom(workshop, 'rack', offcut.id))
      }
      add={
        profileId === undefined ? null : (
          <button
            type="button"
            className="button"
            onClick={() =>
              edit.workshop('put an offcut on the rack', (workshop) =>
                addOffcut(workshop, { profileId, lengthMm: 500, cameOn: today })
              )
            }
          >
            <Icon name="plus" />
            Add an offcut
          </button>
        )
      }
      below={<PrintLabels offcuts={rack} label="Print labels for the rack" />}
      columns={[
        {
          head: 'Profile',
          cell: (offcut) => (
            <ChoiceField
              inCell
              label="Profile"
              value={offcut.profileId}
              choices={profiles.map((each) => ({ value: each.id, label: each.name }))}
              commit={(id) => set(offcut, { profileId: id })}
            />
          )
        },
        {
          head: 'Length',
          cell: (offcut) => (
            <LengthField
              inCell
              label="Length of the offcut"
              path={`rack.${offcut.id}.lengthMm`}
              value={offcut.lengthMm}
              commit={(lengthMm) => set(offcut, { lengthMm })}
            />
          )
        },
        {
          head: 'Worth',
          cell: (offcut) => (
            <MoneyField
              inCell
              label="Worth of the offcut"
              value={offcut.worthMinor}
              commit={(value) => set(offcut, { worthMinor: value ?? 0 })}
            />
          )
        },
        {
          head: 'Came from',
          cell: (offcut) => (
            <TextField
              inCell
              wide
              label="Came from"
              value={offcut.cameFrom}
              commit={(cameFrom) => set(offcut, { cameFrom })}
            />
          )
        },
        {
          head: 'On',
          cell: (offcut) => (
            <TextField
              inCell
              label="Came on"
              path={`rack.${offcut.id}.cameOn`}
              value={offcut.cameOn}
              commit={(cameOn) => set(offcut, { cameOn })}
            />
          )
        }
      ]}
    />
  )
}
