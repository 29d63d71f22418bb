declare module 'fontkit' {
  export interface Face {
    readonly postscriptName: string
    readonly unitsPerEm: number
    glyphForCodePoint(codePoint: number): { readonly advanceWidth: number }
    hasGlyphForCodePoint(codePoint: number): boolean
    glyphsForString(words: string): readonly {
      readonly id: number
      readonly advanceWidth: number
      readonly path: { readonly commands: readonly unknown[] }
    }[]
  }
  export const create: (bytes: Uint8Array) => Face | { readonly fonts: readonly Face[] }
}
