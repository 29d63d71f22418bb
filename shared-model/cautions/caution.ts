export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE' | 'SAFETY INSTRUCTIONS'

/** A caution whose condition holds for this build. */
export interface Caution {
  readonly id: string
  readonly category: string
  readonly signalWord: SignalWord
  readonly text: string
  readonly reason: string
  readonly iso7010: readonly string[]
  readonly sources: readonly string[]
  readonly grade: 'published' | 'published-in-part' | 'common-practice'
  readonly bold: boolean
}
