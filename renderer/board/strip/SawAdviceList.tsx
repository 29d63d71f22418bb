import { changeSaw } from '../../../shared-model/design'
import { HOLD_NAMES } from '../../../shared-model/words'
import { useOffered } from '../../catalogue/use-offered'
import { useLivePlan } from '../../plan/use-plan'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'

/** What the saws at hand would do for this seat; with none that does, the diameters that would. */
export function SawAdviceList({ seatId, sawId }: { readonly seatId: string; readonly sawId: string }) {
  const advice = useLivePlan().sawAdvice.find((each) => each.seatId === seatId)
  const offered = useOffered()
  const edit = useEdit()
  const say = useSay()
  if (advice === undefined) return null
  const options = advice.options.filter((each) => each.hold !== 'drops-through' && each.hold !== 'does-not-enter')
  return (
    <section aria-label="Saws that seat it">
      <h3>Saws that seat it</h3>
      {options.length === 0 ? (
        <p className="small">
          None that you own.
          {advice.wouldDoMm === null
            ? ''
            : ` A diameter from ${say.fine(advice.wouldDoMm.least)} to ${say.fine(advice.wouldDoMm.most)} would do.`}
        </p>
      ) : null}
      <ul className="things">
        {options.map((option) => {
          const saw = offered.saws.find((each) => each.id === option.sawId)
          if (saw === undefined) return null
          return (
            <li key={option.sawId}>
              <button
                type="button"
                className="button"
                aria-pressed={option.sawId === sawId}
                onClick={() => edit.design('change the saw', (design) => changeSaw(design, seatId, saw))}
              >
                <span>{saw.name}</span>
                <span className="quiet small">
                  {HOLD_NAMES[option.hold]}
                  {option.landMm === null ? '' : `, land ${say.fine(option.landMm)}`}
                </span>
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
