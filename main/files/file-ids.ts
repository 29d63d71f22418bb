/** Hands out names for paths, so that the page can speak of a file without knowing or choosing where it is. */
export interface FileIds {
  readonly of: (path: string) => string
  readonly path: (fileId: string) => string | null
}

export function fileIds(): FileIds {
  const byPath = new Map<string, string>()
  const byId = new Map<string, string>()
  return {
    of: (path) => {
      const known = byPath.get(path)
      if (known !== undefined) return known
      const id = `f${byPath.size + 1}`
      byPath.set(path, id)
      byId.set(id, path)
      return id
    },
    path: (fileId) => byId.get(fileId) ?? null
  }
}
