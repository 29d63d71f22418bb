import { addCrop, addSeat, type Design, keepPart } from '../../../shared-model/design'
import type { Profile } from '../../../shared-model/profile'
import { fittingClosures } from '../../catalogue/fitting-closures'
import type { Offered } from '../../catalogue/offered'
import { seatingSaw } from '../../catalogue/seating-saw'
import type { FitAsk } from '../../workers/plan-worker'

/** A first fill where the design has no channel to take it from; a starting value. */
const FIRST_FILL = 0.6

export interface FitChoice {
  readonly cropId: string
  /** Null: every stock of the workshop that a cup seats in. */
  readonly profileId: string | null
  readonly rowGapMm: number
}

/** What to try for: each stock with the closure that holds on it and the cup that seats in it. */
export function fitAsks(
  design: Design,
  from: Offered,
  stockedIds: readonly string[],
  choice: FitChoice
): readonly FitAsk[] {
  const crop = from.crops.find((each) => each.id === choice.cropId)
  if (crop === undefined) return []
  const wanted = (profile: Profile): boolean =>
    choice.profileId === null ? stockedIds.includes(profile.id) : profile.id === choice.profileId
  return from.profiles.filter(wanted).flatMap((profile) => {
    const [closure] = fittingClosures(from.closures, profile)
    const seating = seatingSaw(from, profile)
    if (closure === undefined || seating === null) return []
    const held = keepPart(keepPart(addCrop(design, crop), 'profiles', profile), 'closures', closure)
    const used = seatOf(held, seating.cup.id, seating.saw.id)
    const seated = used === undefined ? addSeat(held, { name: seating.cup.name, ...seating }) : held
    const seatId = used ?? seated.seats.at(-1)?.id
    if (seatId === undefined) return []
    return [
      {
        design: seated,
        wish: {
          profileId: profile.id,
          turned: false,
          closureId: closure.id,
          seatId,
          cropId: crop.id,
          fillShare: design.channels[0]?.fillShare ?? FIRST_FILL,
          rowGapMm: choice.rowGapMm
        }
      }
    ]
  })
}

/** A seat of the design that is this cup in this saw's hole and nothing else. */
const seatOf = (design: Design, cupId: string, sawId: string): string | undefined =>
  design.seats.find(
    ({ stack, sawId: saw }) =>
      saw === sawId && stack.length === 1 && stack[0]?.kind === 'cup' && stack[0].partId === cupId
  )?.id
