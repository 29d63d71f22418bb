import { type BarOf, cutAwayMm } from '../../../shared-model/cutting'
import { shortenBar, takeBackBar } from '../../../shared-model/design'
import { LengthField } from '../../fields/LengthField'
import { useActions, useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'

/** What can be said of a bar: how long it really is, or that nothing is cut from it after all. */
export function BarActs({ bar, kerfMm }: { readonly bar: BarOf; readonly kerfMm: number }) {
  const say = useSay()
  const edit = useEdit()
  const { look } = useActions()
  const isBegun = useApp((state) => state.design.atBench?.bars.some(({ key }) => key === bar.key) === true)
  return (
    <section className="bar-acts" aria-label={`Bar ${bar.mark}`}>
      <h3>
        Bar {bar.mark}, {say.length(bar.lengthMm)}
      </h3>
      <div className="bar-acts-row">
        <LengthField
          label="Its length as found"
          value={bar.lengthMm}
          leastMm={cutAwayMm(bar, kerfMm)}
          mostMm={bar.lengthMm}
          commit={(lengthMm) =>
            edit.design('a bar is shorter than planned', (design) => shortenBar(design, bar, kerfMm, lengthMm))
          }
          hint="Shorter than planned: the rest is planned again"
        />
        {isBegun ? (
          <button
            type="button"
            className="button"
            onClick={() => {
              const said = edit.design('take back what is cut of a bar', (design) => takeBackBar(design, bar.key))
              if (said !== null) look({ notice: { text: said } })
            }}
          >
            Nothing is cut from it after all
          </button>
        ) : null}
      </div>
    </section>
  )
}
