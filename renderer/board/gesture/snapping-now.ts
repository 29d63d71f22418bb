import type { Plan } from '../../../shared-model/plan'
import { graduationNm, NM_PER_MM } from '../../../shared-model/units'
import type { AppState } from '../../store/store'
import type { Scale } from '../scale'
import { channelLines, sillLines } from '../snapping'
import type { Snapping } from './moved'

/** A thing within this many pixels of a line is drawn to it. */
const REACH_PX = 8

/** Snapping for things other than `moving`; null when it is switched off or a key holds it off. */
export function snappingNow(
  state: AppState,
  plan: Plan,
  scale: Scale,
  moving: readonly string[],
  heldOff: boolean
): Snapping | null {
  if (!state.view.snap || heldOff) return null
  const outlines = plan.channels
    .filter((channel) => !moving.includes(channel.channelId))
    .map((channel) => channel.layout.outline)
  const graduation = graduationNm(state.workshop.shows)
  return {
    lines: [
      ...sillLines(plan.sill.lengthMm, plan.sill.depthMm, state.design.sill.clearanceMm),
      ...channelLines(outlines)
    ],
    reachMm: REACH_PX / scale.pxPerMm,
    graduationMm: graduation / NM_PER_MM,
    graduation
  }
}
