import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'

/** The sheets of the batch: how many, what they cost, how good that is, and how many of each ring one sheet holds. */
export function SheetState() {
  const say = useSay()
  const rings = usePlanState((state) => state.full?.rings)
  const stale = usePlanState((state) => state.stale)
  const sheets = useApp((state) => state.workshop.sheets)
  if (rings === undefined || rings.needs.length + rings.plates.length === 0) return null
  const reused = rings.fromCores.reduce((sum, { count }) => sum + count, 0)
  const priced = rings.costMinor !== null
  return (
    <section className={stale ? 'part stale' : 'part'} aria-label="Sheets">
      <div className="part-head">
        <h2>Collars and plates from sheet</h2>
        <span className={rings.proven ? 'tag good' : 'tag note'} role="status">
          <Icon name={rings.proven ? 'good' : 'note'} />
          {rings.proven
            ? 'Proven least'
            : priced
              ? `At most ${say.money(Math.ceil(rings.value - rings.lowerBound))} above the least`
              : `Not proven; at least ${rings.leastSheets} sheets are needed`}
        </span>
      </div>
      <dl className="figures">
        <div>
          <dt>Sheets</dt>
          <dd>{rings.sheets.length}</dd>
        </div>
        <div>
          <dt>Sheet cost</dt>
          <dd>{rings.costMinor === null ? 'price missing' : say.money(rings.costMinor)}</dd>
        </div>
        <div>
          <dt>Cut from cores</dt>
          <dd>{reused}</dd>
        </div>
      </dl>
      {rings.perSheet.length === 0 ? null : (
        <div className="table-holder">
          <table className="list">
            <caption>As many as one sheet holds</caption>
            <thead>
              <tr>
                <th scope="col">Ring</th>
                <th scope="col">Sheet</th>
                <th scope="col" className="number">
                  Found
                </th>
                <th scope="col" className="number">
                  No layout holds more than
                </th>
              </tr>
            </thead>
            <tbody>
              {rings.perSheet.map((each) => (
                <tr key={`${each.needId} ${each.sheetId}`}>
                  <th scope="row">{rings.needs.find(({ id }) => id === each.needId)?.name}</th>
                  <td>{sheets.find(({ id }) => id === each.sheetId)?.name}</td>
                  <td className="number">{each.count}</td>
                  <td className="number">{each.upperBound}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  )
}
