import { useState } from 'react'
import { useDrawn } from '../board/use-drawn'
import { useStill } from '../board/use-still'
import { useLivePlan } from '../plan/use-plan'
import { useApp } from '../store/use-app'
import { useSay } from '../store/use-say'
import { AcrossDrawing } from './AcrossDrawing'
import { AlongDrawing } from './AlongDrawing'
import { FillShareField } from './FillShareField'
import { gapWords } from './gap-words'

/** The selected channel cut along its length and across a site: walls, cups, solution, air gap, to scale. */
export function SideSection() {
  const [open, setOpen] = useState(true)
  const plan = useLivePlan()
  const channels = useApp((state) => state.design.channels)
  const { channelIds, siteIds } = useApp((state) => state.selection)
  const drawn = useDrawn()
  const say = useSay()
  const channelId = channelIds[0] ?? channels[0]?.id
  const channel = useStill(channels.find((each) => each.id === channelId))
  const part = useStill(plan.channels.find((each) => each.channelId === channelId))
  if (channel === undefined || part === undefined) return null
  const site = channel.sites.find((each) => siteIds.includes(each.id)) ?? channel.sites[0]
  const { water } = part
  const gap = water.leastGapMm === null ? { name: 'Air gap', value: 'no cup' } : gapWords(water.leastGapMm, say)
  return (
    <section className="board-section" aria-label="Side section">
      <div className="section-head">
        <button type="button" className="button plain" aria-expanded={open} onClick={() => setOpen(!open)}>
          <strong>Side section</strong> {part.mark}
        </button>
        <dl className="section-figures totals">
          <Figure name="Fill line" value={`${say.length(water.fromTopMm)} from the top`} />
          <Figure name="Solution" value={say.volume(water.litres)} />
          <Figure name={gap.name} value={gap.value} />
        </dl>
        <FillShareField channel={channel} />
      </div>
      {open ? (
        <div className="section-drawings">
          {drawn ? <AlongDrawing channel={channel} part={part} /> : null}
          {drawn && site !== undefined ? <AcrossDrawing channel={channel} part={part} siteId={site.id} /> : null}
        </div>
      ) : null}
    </section>
  )
}

function Figure({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="figure">{value}</dd>
    </div>
  )
}
