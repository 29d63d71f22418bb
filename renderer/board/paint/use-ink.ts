import { useEffect, useState } from 'react'
import { type Ink, readInk } from './ink'

/** The colours as they are now; they change with light and dark and with forced colours. */
export function useInk(): Ink {
  const [ink, setInk] = useState<Ink>(() => readInk(document.documentElement))
  useEffect(() => {
    const again = (): void => setInk((before) => kept(before, readInk(document.documentElement)))
    const watched = ['(prefers-color-scheme: dark)', '(forced-colors: active)'].map((query) => matchMedia(query))
    for (const query of watched) query.addEventListener('change', again)
    window.addEventListener('inkchange', again)
    const grown = new ResizeObserver(again)
    grown.observe(document.documentElement)
    again()
    return () => {
      for (const query of watched) query.removeEventListener('change', again)
      window.removeEventListener('inkchange', again)
      grown.disconnect()
    }
  }, [])
  return ink
}

/** The ink from before as long as nothing of it has changed, so that nothing is drawn again for it. */
const kept = (before: Ink, now: Ink): Ink =>
  Object.entries(now).every(([name, value]) => before[name as keyof Ink] === value) ? before : now
