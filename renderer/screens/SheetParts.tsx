import type { SheetPart } from '../../shared-model/sheet'
import { BlockView } from '../paper-view/BlockView'
import { useSheetParts } from '../paper-view/use-sheet'
import { usePlanState } from '../plan/use-plan'

/** Parts of the build sheet as they will be printed, shown as stale while the plan is behind. */
export function SheetParts({ parts }: { readonly parts: readonly SheetPart[] }) {
  const sheet = useSheetParts(parts)
  const stale = usePlanState((state) => state.stale)
  if (sheet === null) return <p className="quiet">Working it out…</p>
  return (
    <>
      {sheet.sections.map((section) => (
        <section key={section.heading} className={stale ? 'part stale' : 'part'} aria-label={section.heading}>
          <h2>{section.heading}</h2>
          {section.blocks.map((block, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blocks stand in their order
            <BlockView key={index} block={block} />
          ))}
        </section>
      ))}
    </>
  )
}
