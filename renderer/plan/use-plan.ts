import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Plan } from '../../shared-model/plan'
import type { PlanState, PlanStore } from './plan-store'

export const PlanContext = createContext<PlanStore | null>(null)

export function usePlanStore(): PlanStore {
  const store = useContext(PlanContext)
  if (store === null) throw new Error('a part of the window stands outside the plan')
  return store
}

export const usePlanState = <T>(choose: (state: PlanState) => T): T => useStore(usePlanStore(), choose)

/** What follows the hand: layout, seats, water, loads, findings. */
export const useLivePlan = (): Plan => usePlanState((state) => state.live)

/** Bars, bench, bill and price; the last one worked out, and whether it is behind what is shown. */
export const useFullPlan = (): { readonly plan: Plan | null; readonly stale: boolean } => ({
  plan: usePlanState((state) => state.full),
  stale: usePlanState((state) => state.stale)
})

/** Findings and totals: the full plan's when it is fresh, else the live ones. */
export const useCurrentPlan = (): Plan =>
  usePlanState((state) => (state.full !== null && !state.stale ? state.full : state.live))
