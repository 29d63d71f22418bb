import type { Block, SheetPart } from '../../shared-model/sheet'
import { BlockView } from '../paper-view/BlockView'
import { useSheetParts } from '../paper-view/use-sheet'
import { usePlanState } from '../plan/use-plan'

interface SheetPartsProps {
  readonly parts: readonly SheetPart[]
  /** Names of tables, and headings of other blocks, that the screen shows in its own way. */
  readonly without?: readonly string[]
  /** Whether the screen draws in its own way what the sheet draws. */
  readonly undrawn?: boolean
}

/** Parts of the build sheet as they will be printed, shown as stale while the plan is behind. */
export function SheetParts({ parts, without = [], undrawn = false }: SheetPartsProps) {
  const sheet = useSheetParts(parts)
  const stale = usePlanState((state) => state.stale)
  const shown = (block: Block): boolean => !without.includes(nameOf(block)) && !(undrawn && block.kind === 'figure')
  if (sheet === null) return <p className="quiet">Working it out…</p>
  return (
    <>
      {sheet.sections.map((section) => (
        <section key={section.heading} className={stale ? 'part stale' : 'part'} aria-label={section.heading}>
          <h2>{section.heading}</h2>
          {section.blocks.filter(shown).map((block, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blocks stand in their order
            <BlockView key={index} block={block} />
          ))}
        </section>
      ))}
    </>
  )
}

const nameOf = (block: Block): string => (block.kind === 'table' ? block.name : 'heading' in block ? block.heading : '')
