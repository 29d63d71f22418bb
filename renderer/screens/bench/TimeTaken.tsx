import { useState } from 'react'
import { type BenchStep, measuredTime } from '../../../shared-model/bench'
import { editTimes } from '../../../shared-model/design'
import { OPERATION_NAMES } from '../../../shared-model/words'
import { ChoiceField } from '../../fields/ChoiceField'
import { NumberField } from '../../fields/NumberField'
import { problemText } from '../../plan/wording'
import { useActions, useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'

/** How long a step really took: the workshop's time for each becomes the measured one, and every plan after counts with it. */
export function TimeTaken({ steps }: { readonly steps: readonly BenchStep[] }) {
  const say = useSay()
  const edit = useEdit()
  const { look } = useActions()
  const times = useApp((state) => state.workshop.times)
  const shows = useApp((state) => state.workshop.shows)
  const on = useApp((state) => state.on)
  const [stepId, setStep] = useState('')
  const timed = steps.filter((step) => measuredTime(step, times, step.setUpS + step.runS) !== null)
  const step = timed.find(({ id }) => id === stepId) ?? timed[0]
  if (step === undefined) return null
  const plannedS = step.setUpS + step.runS
  const keep = (minutes: number): string | null => {
    const made = measuredTime(step, times, minutes * 60)
    if (made === null) return null
    if (!made.ok) return problemText(made.problem, shows)
    const { key, seconds } = made.value
    const said = edit.workshop('write back a measured time', (workshop) => editTimes(workshop, { [key]: seconds }, on))
    if (said === null) look({ notice: { text: `Measured: ${seconds} s for each. Kept in the workshop.` } })
    return said
  }
  return (
    <section className="part" aria-label="How long it took">
      <h2>How long it took</h2>
      <p className="quiet small">
        Tell what a step took, set-up and all; the time for each is then kept in the workshop as measured.
      </p>
      <div className="fields">
        <ChoiceField
          label="Step"
          value={step.id}
          choices={timed.map((each) => ({ value: each.id, label: nameOf(each, steps) }))}
          commit={setStep}
          hint={`Planned ${say.time(plannedS)} for ${step.count}`}
        />
        <NumberField
          key={`${step.id} ${plannedS}`}
          label="It took"
          unit="min"
          value={Math.round((plannedS / 60) * 10) / 10}
          commit={keep}
        />
      </div>
    </section>
  )
}

const nameOf = (step: BenchStep, steps: readonly BenchStep[]): string =>
  `${steps.indexOf(step) + 1}. ${OPERATION_NAMES[step.kind]}${step.toolName === '' ? '' : `, ${step.toolName}`}`
