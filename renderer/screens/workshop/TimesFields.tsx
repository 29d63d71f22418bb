import type { StepTimes } from '../../../shared-model/bench'
import { editTimes } from '../../../shared-model/design'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

const NAMES: readonly { readonly key: keyof StepTimes; readonly name: string }[] = [
  { key: 'setUpS', name: 'Set-up of a batch' },
  { key: 'markPerPieceS', name: 'Mark a piece' },
  { key: 'cutPerPieceS', name: 'Cut a piece' },
  { key: 'stopSettingS', name: 'Set the stop' },
  { key: 'deburrPerEndS', name: 'Deburr an end' },
  { key: 'markPerHoleS', name: 'Mark a hole' },
  { key: 'pilotPerHoleS', name: 'Pilot a hole' },
  { key: 'sawPerHoleS', name: 'Saw a hole' },
  { key: 'sawPerInchS', name: 'More for each inch of saw' },
  { key: 'toolChangeS', name: 'Change the tool' },
  { key: 'mountS', name: 'Clamp a piece' },
  { key: 'collarS', name: 'Cut a collar' },
  { key: 'boreCupS', name: 'Bore a cup' },
  { key: 'cutRiserS', name: 'Cut a riser' },
  { key: 'washPerChannelS', name: 'Wash a channel' },
  { key: 'jointS', name: 'Make a joint' },
  { key: 'leakTestPerChannelS', name: 'Leak test' },
  { key: 'labelPerChannelS', name: 'Label a channel' },
  { key: 'packPerUnitS', name: 'Pack one' },
  { key: 'cureWaitS', name: 'Wait for the cure' },
  { key: 'leakWaitS', name: 'Wait for the leak test' }
]

/** Times of the shop. */
export function TimesFields() {
  const times = useApp((state) => state.workshop.times)
  const measured = useApp((state) => state.workshop.timesMeasured)
  const on = useApp((state) => state.on)
  const edit = useEdit()
  return (
    <section className="part" aria-label="Times">
      <h2>Times</h2>
      <p className="quiet small">
        In seconds. The starting values are from memory; put your own in, or tell under Drilling & steps how long a step
        took.
      </p>
      <div className="fields">
        {NAMES.map(({ key, name }) => (
          <NumberField
            key={key}
            label={name}
            unit="s"
            least={0}
            path={`times.${key}`}
            value={times[key]}
            commit={(value) => edit.workshop('change a time', (workshop) => editTimes(workshop, { [key]: value }, on))}
            {...(measured?.[key] === undefined ? {} : { hint: `measured ${measured[key]}` })}
          />
        ))}
      </div>
    </section>
  )
}
