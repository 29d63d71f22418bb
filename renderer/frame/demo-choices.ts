import { DEMOS } from '../../shared-model/design'
import type { Pair } from '../store/history'

export interface DemoChoice {
  readonly id: string
  readonly name: string
  readonly about: string
  readonly pair: () => Pair
}

/** Finished designs to look at, each with the workshop it is made in. */
export const DEMO_CHOICES: readonly DemoChoice[] = DEMOS.map(({ id, name, design, workshop }) => ({
  id,
  name,
  about: `${design.channels.length === 1 ? 'One channel' : `${design.channels.length} channels`}, ${design.quantity === 1 ? 'one to make' : `${design.quantity} to make`}.`,
  pair: () => ({ design, workshop })
}))

/** Workshops that belong to the demo designs: not kept as this machine's own. */
export const isDemoWorkshop = (id: string): boolean => DEMOS.some((demo) => demo.workshop.id === id)
