declare module 'fontkit' {
  export interface Face {
    readonly postscriptName: string
    hasGlyphForCodePoint(codePoint: number): boolean
  }
  export const create: (bytes: Uint8Array) => Face | { readonly fonts: readonly Face[] }
}
