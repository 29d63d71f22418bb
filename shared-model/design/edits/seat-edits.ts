import type { Crop } from '../../crops'
import { failed, ok } from '../../outcome'
import type { Collar, Cup, HoleSaw, PlantCollar, Riser } from '../../parts'
import type { Seat, StackItem } from '../../seating'
import type { Design, PartsUsed } from '../design'
import { changed, nextId, withItem } from '../ids'
import { type Edited, inUse, notFound } from './edit'

export interface NewSeat {
  readonly name: string
  readonly saw: HoleSaw
  readonly cup: Cup
  readonly plantCollar?: PlantCollar
}

/** A new seat, the last of the list: a saw and a cup, with or without a plant collar. */
export const addSeat = (design: Design, made: NewSeat): Design => {
  const stack: readonly StackItem[] = [
    { kind: 'cup', partId: made.cup.id },
    ...(made.plantCollar === undefined ? [] : [{ kind: 'plant-collar', partId: made.plantCollar.id } as const])
  ]
  const seat: Seat = { id: nextId('seat', design.seats), name: made.name, sawId: made.saw.id, stack }
  const parts: PartsUsed = {
    ...design.parts,
    saws: withItem(design.parts.saws, made.saw),
    cups: withItem(design.parts.cups, made.cup),
    plantCollars:
      made.plantCollar === undefined ? design.parts.plantCollars : withItem(design.parts.plantCollars, made.plantCollar)
  }
  return { ...design, parts, seats: [...design.seats, seat] }
}

/** A copy of a seat under a new id, the last of the list, to be changed for some sites only. */
export const copySeat = (design: Design, seatId: string, name: string): Edited<Design> => {
  const seat = design.seats.find((each) => each.id === seatId)
  if (seat === undefined) return notFound('seat', seatId)
  return ok({ ...design, seats: [...design.seats, { ...seat, id: nextId('seat', design.seats), name }] })
}

export const changeSaw = (design: Design, seatId: string, saw: HoleSaw): Edited<Design> =>
  withSeat(withPart(design, 'saws', saw), seatId, (seat) => ({ ...seat, sawId: saw.id }))

export const changeCup = (design: Design, seatId: string, cup: Cup): Edited<Design> =>
  withSeat(withPart(design, 'cups', cup), seatId, (seat) => ({ ...seat, stack: put(seat.stack, 'cup', cup.id) }))

/** Puts a riser under the cup, changes it, or takes it out (null). */
export const changeRiser = (design: Design, seatId: string, riser: Riser | null): Edited<Design> =>
  withSeat(riser === null ? design : withPart(design, 'risers', riser), seatId, (seat) => ({
    ...seat,
    stack: put(seat.stack, 'riser', riser?.id ?? null)
  }))

/** Puts a collar in, changes it, or takes it out (null); its saws come with it. */
export const changeCollar = (
  design: Design,
  seatId: string,
  collar: Collar | null,
  saws: readonly HoleSaw[] = []
): Edited<Design> => {
  const withSaws = saws.reduce((made, saw) => withPart(made, 'saws', saw), design)
  return withSeat(collar === null ? withSaws : withPart(withSaws, 'collars', collar), seatId, (seat) => ({
    ...seat,
    stack: put(seat.stack, 'collar', collar?.id ?? null)
  }))
}

export const changePlantCollar = (design: Design, seatId: string, plantCollar: PlantCollar | null): Edited<Design> =>
  withSeat(plantCollar === null ? design : withPart(design, 'plantCollars', plantCollar), seatId, (seat) => ({
    ...seat,
    stack: put(seat.stack, 'plant-collar', plantCollar?.id ?? null)
  }))

/** Takes a seat away that no site uses. */
export const deleteSeat = (design: Design, seatId: string): Edited<Design> => {
  if (!design.seats.some((each) => each.id === seatId)) return notFound('seat', seatId)
  const uses = design.channels.flatMap((each) => each.sites).filter((site) => site.seatId === seatId).length
  if (uses > 0) return inUse('seat', seatId, uses)
  return ok({ ...design, seats: design.seats.filter((each) => each.id !== seatId) })
}

export const addCrop = (design: Design, crop: Crop): Design => ({ ...design, crops: withItem(design.crops, crop) })

/** Most that a plant is taken to drink in a day, mL: as the documents have it. */
const DAILY_MOST_ML = 10_000

/** What the grower measured that one plant of a crop drinks in a day, mL; null: nobody knows. 0 to 10 000 mL. */
export const measureDailyUse = (design: Design, cropId: string, ml: number | null): Edited<Design> => {
  if (!design.crops.some(({ id }) => id === cropId)) return notFound('crop', cropId)
  const field = `crops.${cropId}.dailyUseMl`
  if (ml !== null && !(ml >= 0 && ml <= DAILY_MOST_ML)) {
    const figures = { field, value: Number.isFinite(ml) ? ml : -1, least: 0, most: DAILY_MOST_ML }
    return failed({ code: 'field-out-of-range', figures, where: { field } })
  }
  return ok({
    ...design,
    crops: changed(design.crops, cropId, (crop) => ({
      ...crop,
      dailyUseMl: ml === null ? null : { least: ml, most: ml },
      evidence: { ...crop.evidence, dailyUseMl: { grade: 'measured', source: 'user' } }
    }))
  })
}

/** Overwrites the design's own copy of a part with a measured or changed one of the same id, or adds it. */
export const keepPart = <K extends keyof PartsUsed>(design: Design, shelf: K, part: PartsUsed[K][number]): Design => {
  const list: readonly { readonly id: string }[] = design.parts[shelf]
  const parts = list.some((each) => each.id === part.id) ? changed(list, part.id, () => part) : [...list, part]
  return { ...design, parts: { ...design.parts, [shelf]: parts } }
}

const withPart = <K extends keyof PartsUsed>(design: Design, shelf: K, part: PartsUsed[K][number]): Design => {
  const list: readonly { readonly id: string }[] = design.parts[shelf]
  return { ...design, parts: { ...design.parts, [shelf]: withItem(list, part) } }
}

const withSeat = (design: Design, seatId: string, change: (seat: Seat) => Seat): Edited<Design> =>
  design.seats.some((each) => each.id === seatId)
    ? ok({ ...design, seats: changed(design.seats, seatId, change) })
    : notFound('seat', seatId)

/** From the hole up: riser, collar, cup, plant collar. */
const ORDER: readonly StackItem['kind'][] = ['riser', 'collar', 'cup', 'plant-collar']

const put = (stack: readonly StackItem[], kind: StackItem['kind'], partId: string | null): readonly StackItem[] => {
  if (partId === null) return stack.filter((each) => each.kind !== kind)
  if (stack.some((each) => each.kind === kind))
    return stack.map((each) => (each.kind === kind ? { kind, partId } : each))
  const above = stack.findIndex((each) => ORDER.indexOf(each.kind) > ORDER.indexOf(kind))
  const at = above < 0 ? stack.length : above
  return [...stack.slice(0, at), { kind, partId }, ...stack.slice(at)]
}
