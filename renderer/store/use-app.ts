import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Actions, AppState, AppStore } from './store'

export const StoreContext = createContext<AppStore | null>(null)

export function useAppStore(): AppStore {
  const store = useContext(StoreContext)
  if (store === null) throw new Error('a part of the window stands outside the store')
  return store
}

/** A part of the state; what is chosen must keep its identity while it is the same. */
export const useApp = <T>(choose: (state: AppState) => T): T => useStore(useAppStore(), choose)

export const useActions = (): Actions => useAppStore().do
