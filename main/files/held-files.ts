import type { DocumentKind } from '../bridge/contract'

/** Which window has which file open: one design and one workshop a window. */
export interface HeldFiles {
  /** The file becomes the window's own in place of the one it had; false, and nothing changes, where another has it. */
  readonly hold: (window: number, kind: DocumentKind, path: string) => boolean
  readonly holder: (path: string) => number | null
  readonly release: (window: number) => void
}

export function heldFiles(): HeldFiles {
  const byWindow = new Map<number, Map<DocumentKind, string>>()
  const holder = (path: string): number | null => {
    for (const [window, files] of byWindow) if ([...files.values()].includes(path)) return window
    return null
  }
  return {
    hold: (window, kind, path) => {
      const other = holder(path)
      if (other !== null && other !== window) return false
      const files = byWindow.get(window) ?? new Map<DocumentKind, string>()
      byWindow.set(window, files.set(kind, path))
      return true
    },
    holder,
    release: (window) => {
      byWindow.delete(window)
    }
  }
}
