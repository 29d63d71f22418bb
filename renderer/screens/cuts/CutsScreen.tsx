import { useHasChannels } from '../../paper-view/use-sheet'
import { useFullPlan } from '../../plan/use-plan'
import { Empty } from '../Empty'
import { Page } from '../Page'
import { PrintParts } from '../PrintParts'
import { SheetParts } from '../SheetParts'
import { Working } from '../Working'
import { CutState } from './CutState'
import { MarkBuilt } from './MarkBuilt'
import { SheetState } from './SheetState'

/** How the bars are cut, drawn to scale, and how good that is. */
export default function CutsScreen() {
  const has = useHasChannels()
  const { plan } = useFullPlan()
  return (
    <Page
      title="Cuts"
      says="Every piece out of whole bars, kerf and end trim counted. What is read here is what the sheet prints."
      action={has ? <PrintParts label="Print the cut list" parts={['cuts']} /> : null}
    >
      <Working />
      {has ? (
        <>
          {plan?.cuts.map((cut) => (
            <CutState key={cut.profileId} cut={cut} />
          ))}
          <SheetState />
          <MarkBuilt />
          {/* Each bar and what is left of it stands above. */}
          <SheetParts parts={['cuts']} without={['bars']} undrawn />
          <SheetParts parts={['collars']} />
        </>
      ) : (
        <Empty says="There is nothing to cut yet. Put a channel on the sill first." />
      )}
    </Page>
  )
}
