import { type KeyboardEvent, useId, useState } from 'react'
import type { Result } from '../../shared-model/outcome'

export interface EntrySetup<T> {
  readonly value: T
  readonly show: (value: T) => string
  readonly read: (text: string) => Result<T, string>
  /** Gives back why the value cannot be taken, or null. */
  readonly commit: (value: T) => string | null
}

export interface Entry {
  readonly id: string
  readonly text: string
  readonly error: string | null
  readonly change: (text: string) => void
  readonly leave: () => void
  readonly key: (event: KeyboardEvent) => void
}

/**
 * A typed figure: what is being typed stays as typed until Enter or leaving the field; what cannot be read stays too, with
 * the reason; Escape brings the old figure back.
 */
export function useEntry<T>({ value, show, read, commit }: EntrySetup<T>): Entry {
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [error, setError] = useState<string | null>(null)
  const shown = show(value)
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
  return {
    id,
    text: draft ?? shown,
    error,
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
