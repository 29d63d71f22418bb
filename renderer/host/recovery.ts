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
  const { savedOn, design, workshop, file, saved } = found as Record<string, unknown>
  return (
    [savedOn, design, workshop].every((each) => typeof each === 'string') &&
    !Number.isNaN(Date.parse(String(savedOn))) &&
    (file === null || isFileRef(file)) &&
    (saved === undefined || saved === null || typeof saved === 'string')
  )
}

function isFileRef(found: unknown): boolean {
  if (typeof found !== 'object' || found === null) return false
  const { id, name } = found as Record<string, unknown>
  return typeof id === 'string' && typeof name === 'string'
}
