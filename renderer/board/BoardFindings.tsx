import { useStore } from 'zustand'
import type { Plan, PlanFinding } from '../../shared-model/plan'
import { useGoTo } from '../frame/use-go-to'
import { Icon } from '../icons/Icon'
import { useCurrentPlan } from '../plan/use-plan'
import { SEVERITY_NAMES, wordsOf } from '../plan/wording'
import { useApp } from '../store/use-app'
import { boardStore } from './board-store'
import { RULER_PX } from './paint/rulers'
import { type Point, type Scale, toPx } from './scale'

const WEIGHT = { stop: 0, warn: 1, note: 2 } as const
/** Half a mark and a little more: it stands whole inside the picture. */
const HALF_PX = 13
/** A board is not read with more marks on it than this; the list at the foot has them all. */
const MOST = 120

interface Placed {
  readonly key: string
  readonly x: number
  readonly y: number
  readonly findings: readonly PlanFinding[]
}

/** Findings where they are: a mark at the hole or the channel; a click goes to the field that clears it. */
export function BoardFindings() {
  const plan = useCurrentPlan()
  const scale = useStore(boardStore, (state) => state.scale)
  const size = useStore(boardStore, (state) => state.size)
  const shows = useApp((state) => state.workshop.shows)
  const goTo = useGoTo()
  const inside = (at: Placed): boolean =>
    at.x > RULER_PX && at.y > RULER_PX && at.x < size.width - 12 && at.y < size.height - 12
  return (
    <section className="board-findings" aria-label="Findings on the board">
      {placed(plan, scale, size)
        .filter(inside)
        .slice(0, MOST)
        .map(({ key, x, y, findings }) => {
          const [worst] = findings
          if (worst === undefined) return null
          const text = findings.map((each) => `${SEVERITY_NAMES[each.severity]}: ${wordsOf(each, shows)}`).join('\n')
          return (
            <button
              key={key}
              type="button"
              className={`board-finding ${worst.severity}`}
              style={{ left: `${x - 12}px`, top: `${y - 12}px` }}
              aria-label={text}
              title={text}
              onClick={() => goTo(worst.where)}
            >
              <Icon name={worst.severity} />
            </button>
          )
        })}
    </section>
  )
}

interface Size {
  readonly width: number
  readonly height: number
}

function placed(plan: Plan, scale: Scale, size: Size): readonly Placed[] {
  const groups = new Map<string, { x: number; y: number; findings: PlanFinding[] }>()
  for (const finding of plan.findings) {
    if (finding.severity === 'note') continue
    const layout = plan.channels.find((each) => each.channelId === finding.where.channelId)?.layout
    if (layout === undefined) continue
    const hole = layout.holes.find((each) => each.id === (finding.where.siteId ?? finding.where.openingId))
    const key = `${layout.channelId}/${hole?.id ?? ''}`
    const group = groups.get(key)
    if (group !== undefined) {
      group.findings.push(finding)
      continue
    }
    const { outline } = layout
    const at = hole === undefined ? cornerInSight(outline, scale, size) : toPx(scale, hole.xMm, hole.yMm)
    const lift = hole === undefined ? 0 : (hole.diameterMm / 2) * scale.pxPerMm + 4
    groups.set(key, { x: at.x, y: at.y - lift, findings: [finding] })
  }
  return [...groups].map(([key, group]) => ({
    key,
    x: group.x,
    y: group.y,
    findings: [...group.findings].sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity])
  }))
}

/** The far corner at the glass, or where a channel that runs out of the picture leaves it. */
function cornerInSight(outline: Plan['channels'][number]['layout']['outline'], scale: Scale, size: Size): Point {
  const corner = toPx(scale, outline.xMm + outline.lengthMm, outline.yMm + outline.depthMm)
  const other = toPx(scale, outline.xMm, outline.yMm)
  return {
    x: Math.max(other.x, Math.min(corner.x, size.width - HALF_PX)),
    y: Math.min(other.y, Math.max(corner.y, RULER_PX + HALF_PX))
  }
}
