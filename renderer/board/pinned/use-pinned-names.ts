import { useMemo } from 'react'
import { useApp } from '../../store/use-app'
import { anchorKey, namedAnchors } from './anchor-names'

/** What each pinned thing is called: a dimension by its two ends, a note by its words. */
export function usePinnedNames(): (id: string) => string {
  const channels = useApp((state) => state.design.channels)
  const dimensions = useApp((state) => state.design.dimensions)
  const notes = useApp((state) => state.design.notes)
  return useMemo(() => {
    const anchors = new Map(
      dimensions.length === 0 ? [] : namedAnchors(channels).map(({ value, label }): [string, string] => [value, label])
    )
    const nameOf = (key: string): string => anchors.get(key) ?? 'gone'
    const names = new Map([
      ...dimensions.map(({ id, from, to }): [string, string] => [
        id,
        `${nameOf(anchorKey(from))} to ${nameOf(anchorKey(to))}`
      ]),
      ...notes.map(({ id, text }): [string, string] => [id, text === '' ? 'Note without words' : `Note: ${text}`])
    ])
    return (id) => names.get(id) ?? ''
  }, [channels, dimensions, notes])
}
