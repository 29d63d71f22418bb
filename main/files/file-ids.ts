/** Hands out names for paths, so that the page can speak of a file without knowing or choosing where it is. */
export interface FileIds {
  readonly of: (path: string) => string
  /** A name for a copy that has no file of its own yet. */
  readonly copy: (name: string) => string
  readonly path: (fileId: string) => string | null
  readonly copyName: (fileId: string) => string | null
}

export function fileIds(): FileIds {
  const byPath = new Map<string, string>()
  const byId = new Map<string, string>()
  const copies = new Map<string, string>()
  const next = (): string => `f${byId.size + copies.size + 1}`
  return {
    of: (path) => {
      const known = byPath.get(path)
      if (known !== undefined) return known
      const id = next()
      byPath.set(path, id)
      byId.set(id, path)
      return id
    },
    copy: (name) => {
      const id = next()
      copies.set(id, name)
      return id
    },
    path: (fileId) => byId.get(fileId) ?? null,
    copyName: (fileId) => copies.get(fileId) ?? null
  }
}
