import { type KeyboardEvent, useId, useRef, useState } from 'react'
import type { Result } from '../../shared-model/outcome'
import { useAppStore } from '../store/use-app'

export interface EntrySetup<T> {
  readonly value: T
  readonly show: (value: T) => string
  readonly read: (text: string) => Result<T, string>
  /** Gives back why the value cannot be taken, or null. */
  readonly commit: (value: T) => string | null
  /** Taken while it is typed, as soon as it can be read; all of it is one step. */
  readonly live?: boolean | undefined
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
 * the reason; Escape brings the old figure back. A live one is taken with every letter, without a word while it cannot be.
 */
export function useEntry<T>({ value, show, read, commit, live }: EntrySetup<T>): Entry {
  const id = useId()
  const store = useAppStore()
  const turn = useRef(0)
  const old = useRef<{ readonly value: T } | null>(null)
  const [draft, setDraft] = useState<string | null>(null)
  const [error, setError] = useState<string | null>(null)
  const shown = show(value)
  const put = (taken: T): string | null =>
    live === true ? store.do.asOne(`${id} ${turn.current}`, () => commit(taken)) : commit(taken)
  const end = (): void => {
    setDraft(null)
    old.current = null
  }
  const follow = (text: string): void => {
    if (old.current === null) {
      turn.current += 1
      old.current = { value }
    }
    const reading = text.trim() === '' ? null : read(text)
    if (reading?.ok === true) put(reading.value)
  }
  const take = (): void => {
    if (draft === null) return
    if (draft === shown) {
      end()
      setError(null)
      return
    }
    const reading = read(draft)
    const problem = reading.ok ? put(reading.value) : reading.problem
    setError(problem)
    if (problem === null) end()
  }
  return {
    id,
    text: draft ?? shown,
    error,
    change: (text) => {
      setDraft(text)
      setError(null)
      if (live === true) follow(text)
    },
    leave: take,
    key: (event) => {
      if (event.key === 'Enter') take()
      if (event.key === 'Escape' && draft !== null) {
        event.stopPropagation()
        if (live === true && old.current !== null) put(old.current.value)
        end()
        setError(null)
      }
    }
  }
}
