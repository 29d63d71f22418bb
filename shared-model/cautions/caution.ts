export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE' | 'SAFETY INSTRUCTIONS'

/** A caution whose condition holds for this build. */
export interface Caution {
  readonly id: string
  readonly category: string
  readonly signalWord: SignalWord
  /** May name a figure in braces, `{filledWeight}` or `{sillLoad}`: `words` puts it in, in the reader's units. */
  readonly text: string
  readonly reason: string
  /** Numbers of ISO 7010 signs. */
  readonly iso7010: readonly string[]
  /** Ids in the register of sources. */
  readonly sources: readonly string[]
  readonly grade: 'published' | 'published-in-part' | 'common-practice'
  /** Printed bold: the saw is a large one. */
  readonly bold: boolean
  /** What the braces in the text stand for. */
  readonly figures: { readonly filledWeightG?: number; readonly sillLoadG?: number }
}
