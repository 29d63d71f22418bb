import type { LadderStep } from '../../../shared-model/pricing'
import { plainOrder, type Say } from '../../../shared-model/words'
import { useSay } from '../../store/use-say'

/** The ladder's figures, a row for each size. */
export function LadderTable({ steps }: { readonly steps: readonly LadderStep[] }) {
  const say = useSay()
  const money = (minor: number | null): string => (minor === null ? 'price missing' : say.money(minor))
  return (
    <div className="table-holder">
      <table className="list" aria-label="Batch sizes and what they come to">
        <thead>
          <tr>
            {['Units', 'Cost of one', 'Price before tax', 'New bars', 'Packs', 'Tool changes', 'Worked time'].map(
              (head) => (
                <th key={head} scope="col" className="number">
                  {head}
                </th>
              )
            )}
            <th scope="col">Opens, more than the size before</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr key={step.units}>
              <th scope="row" className="number">
                {step.units}
              </th>
              <td className="number">{money(step.unitCostMinor)}</td>
              <td className="number">{step.priceMinor === null ? 'none' : say.money(step.priceMinor)}</td>
              <td className="number">{step.bars}</td>
              <td className="number">{step.packs}</td>
              <td className="number">{step.toolChanges}</td>
              <td className="number">{say.time(step.workedS)}</td>
              <td>{opens(step, say)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const opens = (step: LadderStep, say: Say): string =>
  step.opens
    .map(({ kind, name, size, count }) => {
      const what = kind === 'bar' ? `${plainOrder(name)}, ${say.length(size)}` : plainOrder(name)
      return count === 1 ? what : `${count} × ${what}`
    })
    .join('; ')
