import { useHasChannels } from '../../paper-view/use-sheet'
import { useFullPlan } from '../../plan/use-plan'
import { useSay } from '../../store/use-say'
import { Empty } from '../Empty'
import { Page } from '../Page'
import { PrintParts } from '../PrintParts'
import { SheetParts } from '../SheetParts'
import { Working } from '../Working'
import { TimeTaken } from './TimeTaken'

/** Where the holes go and in which order the work is done. */
export default function BenchScreen() {
  const has = useHasChannels()
  const { plan } = useFullPlan()
  const say = useSay()
  const bench = plan?.bench
  return (
    <Page
      title="Drilling & steps"
      says="Each channel with its holes in running dimensions from the datum end, then the steps with the fewest tool changes."
      action={
        has ? <PrintParts label="Print drill sheets and steps" parts={['drilling', 'templates', 'steps']} /> : null
      }
    >
      <Working />
      {has ? (
        <>
          {bench === undefined ? null : (
            <dl className="figures part">
              <div>
                <dt>Holes</dt>
                <dd>{bench.holes.length}</dd>
              </div>
              <div>
                <dt>Tool changes</dt>
                <dd>{bench.toolChanges}</dd>
                <dd className="quiet small">
                  {bench.proven ? 'proven best order' : `no order has fewer than ${bench.leastToolChanges}`}
                </dd>
              </div>
              <div>
                <dt>Worked time of the batch</dt>
                <dd>{say.time(bench.workedS)}</dd>
              </div>
              <div>
                <dt>With waits</dt>
                <dd>{say.time(bench.elapsedS)}</dd>
              </div>
            </dl>
          )}
          <SheetParts parts={['drilling', 'steps', 'cautions']} />
          {bench === undefined ? null : <TimeTaken steps={bench.steps} />}
        </>
      ) : (
        <Empty says="There is nothing to drill yet. Put a channel with cup sites on the sill first." />
      )}
    </Page>
  )
}
