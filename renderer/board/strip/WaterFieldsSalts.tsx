import type { Salt } from '../../../shared-model/reservoir'
import { MaybeNumberField } from '../../fields/MaybeNumberField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { Icon } from '../../icons/Icon'

/** As labels print them: phosphorus and potassium as oxides. */
const SHARES = ['N', 'P2O5', 'K2O', 'Ca', 'Mg', 'S'] as const

interface SaltsFieldsProps {
  readonly salts: readonly Salt[]
  readonly set: (salts: readonly Salt[]) => string | null
}

/** Dry salts: how much of each in a litre, and the shares its label prints. */
export function SaltsFields({ salts, set }: SaltsFieldsProps) {
  const change = (at: number, changes: Partial<Salt>): string | null =>
    set(salts.map((salt, index) => (index === at ? { ...salt, ...changes } : salt)))
  return (
    <>
      {salts.map((salt, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a salt goes by its place in the list
        <fieldset key={at} className="fields salt" aria-label={`Salt ${at + 1}: ${salt.name}`}>
          <TextField
            label={`Salt ${at + 1}`}
            path={`water.feed.salts.${at}.name`}
            value={salt.name}
            commit={(name) => change(at, { name })}
          />
          <NumberField
            label="In a litre"
            unit="g"
            path={`water.feed.salts.${at}.gPerL`}
            value={salt.gPerL}
            commit={(gPerL) => change(at, { gPerL })}
          />
          {SHARES.map((share) => (
            <MaybeNumberField
              key={share}
              label={share}
              unit="%"
              path={`water.feed.salts.${at}.percent.${share}`}
              value={salt.percent[share] ?? null}
              commit={(value) => {
                const { [share]: _before, ...others } = salt.percent
                return change(at, { percent: value === null ? others : { ...others, [share]: value } })
              }}
            />
          ))}
          <button type="button" className="button" onClick={() => set(salts.filter((_, index) => index !== at))}>
            Take {salt.name} away
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => set([...salts, { name: `Salt ${salts.length + 1}`, gPerL: 1, percent: {} }])}
      >
        <Icon name="plus" />
        Add a salt
      </button>
    </>
  )
}
