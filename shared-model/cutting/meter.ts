import type { Budget } from '../outcome'

/** Counts work against a budget; a unit is about a thousand table cells, a microsecond or so. */
export interface Meter {
  readonly spend: (units: number) => void
  readonly spent: () => number
  readonly isOut: () => boolean
  /** What the host's clock has left; without end where it keeps none. */
  readonly secondsLeft: () => number
  /** A meter for a part of what is left. */
  readonly part: (units: number) => Meter
}

export const createMeter = (budget: Budget): Meter => {
  let spent = 0
  let sinceAsked = 0
  let stopped = false
  return {
    spend: (units) => {
      spent += units
      sinceAsked += units
    },
    spent: () => spent,
    isOut: () => {
      if (!stopped && sinceAsked > ASK_EVERY) {
        sinceAsked = 0
        stopped = budget.stop()
      }
      return stopped || spent >= budget.work
    },
    secondsLeft: () => Math.max(0, budget.secondsLeft?.() ?? Number.POSITIVE_INFINITY),
    part(units) {
      const until = spent + units
      return {
        spend: this.spend,
        spent: this.spent,
        secondsLeft: this.secondsLeft,
        isOut: () => spent >= until || this.isOut(),
        part: (less) => this.part(Math.min(less, until - spent))
      }
    }
  }
}

const ASK_EVERY = 2000
