import type { Design } from '../design'
import type { Channel } from '../layout'
import { keepEach } from './kept'

/** What the sites of one channel come to: seats and crops in the order in which they first stand along it. */
export interface SiteTally {
  /** Sites by the seat they have. */
  readonly seats: ReadonlyMap<string, number>
  readonly cropIds: ReadonlySet<string>
  readonly plants: number
}

const keptTallies = keepEach<Channel, SiteTally>()

/** The tally of each channel, in the order of the channels. */
export const siteTallies = (design: Design): readonly SiteTally[] =>
  keptTallies(design.channels, ({ sites }) => [sites], tallyOf)

const tallyOf = ({ sites }: Channel): SiteTally => {
  const seats = new Map<string, number>()
  const cropIds = new Set<string>()
  let plants = 0
  for (const { seatId, cropId } of sites) {
    seats.set(seatId, (seats.get(seatId) ?? 0) + 1)
    if (cropId === null) continue
    cropIds.add(cropId)
    plants += 1
  }
  return { seats, cropIds, plants }
}
