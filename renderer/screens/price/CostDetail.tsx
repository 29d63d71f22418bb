import type { Plan } from '../../../shared-model/plan'
import { labourByStep, materialByLine, type UnitCost } from '../../../shared-model/pricing'
import { OPERATION_NAMES } from '../../../shared-model/words'
import { useSay } from '../../store/use-say'

/** Where material and labour of the batch come from: by line of the bill, and by kind of step. */
export function CostDetail({ plan, cost }: { readonly plan: Plan; readonly cost: UnitCost }) {
  const say = useSay()
  const { bill, bench } = plan
  return (
    <details className="part">
      <summary>Material by line, labour by step</summary>
      <div className="parts-two">
        <div className="table-holder">
          <table className="list" aria-label="Material by line">
            <thead>
              <tr>
                <th scope="col">Material</th>
                <th scope="col" className="number">
                  One carries
                </th>
                <th scope="col" className="number">
                  The batch carries
                </th>
                <th scope="col" className="number">
                  Unused rest
                </th>
              </tr>
            </thead>
            <tbody>
              {materialByLine(bill, cost).map((line) => (
                <tr key={line.lineId}>
                  <th scope="row">{line.name}</th>
                  <td className="number">{say.money(line.eachMinor)}</td>
                  <td className="number">{say.money(line.usedMinor)}</td>
                  <td className="number">{say.money(line.restMinor)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <div className="table-holder">
          <table className="list" aria-label="Labour by step">
            <thead>
              <tr>
                <th scope="col">Step</th>
                <th scope="col" className="number">
                  How often
                </th>
                <th scope="col" className="number">
                  Worked
                </th>
                <th scope="col" className="number">
                  Labour
                </th>
                <th scope="col" className="number">
                  Waiting, not paid
                </th>
              </tr>
            </thead>
            <tbody>
              {labourByStep(bench, cost).map(({ kind, count, workedS, waitS, labourMinor }) => (
                <tr key={kind ?? ''}>
                  <th scope="row">{kind === null ? 'Set-up of the batch' : OPERATION_NAMES[kind]}</th>
                  <td className="number">{count === 0 ? '' : count}</td>
                  <td className="number">{say.time(workedS)}</td>
                  <td className="number">{say.money(labourMinor)}</td>
                  <td className="number">{waitS === 0 ? '' : say.time(waitS)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
      <p className="quiet small">
        Worked {say.time(bench.workedS)} at the pace of the first; done after {say.time(bench.elapsedS)} with every cure
        and test waited for. Learning shortens the run time only.
      </p>
    </details>
  )
}
