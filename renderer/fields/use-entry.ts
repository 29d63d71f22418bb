import { type KeyboardEvent, useCallback, useEffect, useId, useRef, useState } from 'react'
import type { Result } from '../../shared-model/outcome'
import { useApp } from '../store/use-app'

export interface EntrySetup<T> {
  readonly value: T
  readonly show: (value: T) => string
  readonly read: (text: string) => Result<T, string>
  /** Gives back why the value cannot be taken, or null. */
  readonly commit: (value: T) => string | null
  /** Dotted path of the field, so that a finding can send the hand here. */
  readonly path?: string | undefined
}

export interface Entry {
  readonly id: string
  readonly text: string
  readonly error: string | null
  readonly inputRef: (element: HTMLInputElement | null) => void
  readonly change: (text: string) => void
  readonly leave: () => void
  readonly key: (event: KeyboardEvent) => void
}

/**
 * A typed figure: what is being typed stays as typed until Enter or leaving the field; what cannot be read stays too, with
 * the reason; Escape brings the old figure back.
 */
export function useEntry<T>({ value, show, read, commit, path }: EntrySetup<T>): Entry {
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [error, setError] = useState<string | null>(null)
  const element = useRef<HTMLInputElement | null>(null)
  const shown = show(value)
  const wanted = useApp((state) => (path !== undefined && state.view.wanted?.path === path ? state.view.wanted : null))

  useEffect(() => {
    if (wanted === null) return
    element.current?.focus()
    element.current?.select()
    element.current?.scrollIntoView({ block: 'nearest' })
  }, [wanted])

  const take = (): void => {
    if (draft === null) return
    if (draft === shown) {
      setDraft(null)
      setError(null)
      return
    }
    const reading = read(draft)
    const problem = reading.ok ? commit(reading.value) : reading.problem
    setError(problem)
    if (problem === null) setDraft(null)
  }
  const inputRef = useCallback((made: HTMLInputElement | null) => {
    element.current = made
  }, [])
  return {
    id,
    text: draft ?? shown,
    error,
    inputRef,
    change: (text) => {
      setDraft(text)
      setError(null)
    },
    leave: take,
    key: (event) => {
      if (event.key === 'Enter') take()
      if (event.key === 'Escape' && draft !== null) {
        event.stopPropagation()
        setDraft(null)
        setError(null)
      }
    }
  }
}
