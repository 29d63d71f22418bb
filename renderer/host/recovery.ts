import type { Recovery } from './host'

export function recoveryFrom(text: string | null): Recovery | null {
  if (text === null) return null
  try {
    const found: unknown = JSON.parse(text)
    return isRecovery(found) ? found : null
  } catch {
    return null
  }
}

/** Kept by an earlier run of the program: checked before it is trusted. */
export function isRecovery(found: unknown): found is Recovery {
  if (typeof found !== 'object' || found === null) return false
  const { savedOn, design, workshop } = found as Record<string, unknown>
  return typeof savedOn === 'string' && typeof design === 'string' && typeof workshop === 'string'
}
