import type { Pair } from '../store/history'

export interface DemoChoice {
  readonly name: string
  readonly about: string
  readonly pair: () => Pair
}

export const DEMO_CHOICES: readonly DemoChoice[] = []
