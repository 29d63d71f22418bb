import { addDrill, deleteFrom, giveUpSaw, ownSaw } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { CATALOGUE, type HoleSaw } from '../../../shared-model/parts'
import { CheckField } from '../../fields/CheckField'
import { MoneyField } from '../../fields/MoneyField'
import { NumberField } from '../../fields/NumberField'
import { Icon } from '../../icons/Icon'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

/** Hole saws on the wall, with what they cost, and the drills at the bench. */
export function SawsList() {
  const saws = useApp((state) => state.workshop.saws)
  const drills = useApp((state) => state.workshop.drills)
  const edit = useEdit()
  const own = (saw: HoleSaw): string | null => edit.workshop('own a saw', (workshop) => ownSaw(workshop, saw))
  const known = [
    ...saws.map((each) => each.saw),
    ...CATALOGUE.saws.filter((saw) => !saws.some((each) => each.saw.id === saw.id))
  ]
  const sorted = [...known].sort((a, b) => a.diameterMm - b.diameterMm)
  return (
    <section className="part" aria-label="Tools" data-path="saws">
      <h2>Hole saws you own</h2>
      <ul className="saws">
        {sorted.map((saw) => {
          const owned = saws.find((each) => each.saw.id === saw.id)
          const cost = (changes: Parameters<typeof ownSaw>[2]): string | null =>
            edit.workshop('price a saw', (workshop) => ownSaw(workshop, saw, { ...owned, ...changes }))
          return (
            <li key={saw.id} data-path={`saws.${saw.id}`}>
              <CheckField
                label={saw.name}
                value={owned !== undefined}
                commit={(wanted) =>
                  wanted ? own(saw) : edit.workshop('give up a saw', (workshop) => giveUpSaw(workshop, saw.id))
                }
              />
              {owned === undefined ? null : (
                <div className="button-row saw-cost">
                  <MoneyField
                    inCell
                    label={`Price of ${saw.name}`}
                    value={owned.priceMinor}
                    commit={(priceMinor) => cost({ priceMinor })}
                  />
                  <NumberField
                    inCell
                    whole
                    least={0}
                    label={`Holes that ${saw.name} lasts`}
                    value={owned.lifeHoles ?? 0}
                    commit={(holes) => cost({ lifeHoles: holes === 0 ? null : holes })}
                  />
                </div>
              )}
            </li>
          )
        })}
      </ul>
      <p className="quiet small">Price, and how many holes it lasts (nought: not known).</p>
      <h2 data-path="drills">Drills</h2>
      <ul className="bare-list">
        {drills.map((drill) => (
          <li key={drill.id} className="button-row">
            {drill.name} ({drill.kind === 'press' ? 'on a stand' : 'held by hand'})
            <button
              type="button"
              className="button plain"
              aria-label={`Take ${drill.name} away`}
              onClick={() => edit.workshop('take a drill away', (workshop) => deleteFrom(workshop, 'drills', drill.id))}
            >
              <Icon name="remove" />
            </button>
          </li>
        ))}
      </ul>
      <div className="button-row">
        <button
          type="button"
          className="button"
          onClick={() => edit.workshop('add a drill', (workshop) => ok(addDrill(workshop, 'Hand drill', 'hand')))}
        >
          Add a hand drill
        </button>
        <button
          type="button"
          className="button"
          onClick={() => edit.workshop('add a drill', (workshop) => ok(addDrill(workshop, 'Bench drill', 'press')))}
        >
          Add a bench drill
        </button>
      </div>
    </section>
  )
}
