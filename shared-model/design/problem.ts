import type { ProblemOf } from '../outcome'

/** What can be wrong with a document or an edit of one. `field` is the dotted path of the value that is wrong. */
export interface DesignProblemCodes {
  readonly 'document-too-large': { readonly bytes: number; readonly mostBytes: number }
  readonly 'document-not-json': { readonly detail: string }
  readonly 'document-too-deep': { readonly mostDepth: number }
  readonly 'document-too-many-values': { readonly most: number }
  readonly 'schema-newer': { readonly found: number; readonly known: number }
  readonly 'schema-unknown': { readonly found: string; readonly known: number }
  /** With both bounds where a number is wanted. */
  readonly 'field-missing': {
    readonly field: string
    readonly wanted: string
    readonly least?: number
    readonly most?: number
  }
  readonly 'field-wrong-type': {
    readonly field: string
    readonly wanted: string
    readonly got: string
    readonly least?: number
    readonly most?: number
  }
  readonly 'field-not-finite': { readonly field: string; readonly least: number; readonly most: number }
  readonly 'field-out-of-range': {
    readonly field: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  readonly 'field-not-whole': {
    readonly field: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  readonly 'field-not-one-of': { readonly field: string; readonly value: string; readonly allowed: string }
  readonly 'field-malformed': { readonly field: string; readonly value: string; readonly wanted: string }
  readonly 'text-too-long': { readonly field: string; readonly length: number; readonly most: number }
  readonly 'count-out-of-range': {
    readonly field: string
    readonly count: number
    readonly least: number
    readonly most: number
  }
  readonly 'id-twice': { readonly field: string; readonly id: string }
  readonly 'reference-dangling': { readonly field: string; readonly id: string; readonly wanted: string }
  readonly 'sizes-disagree': {
    readonly field: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  /** The document was written by a newer version of the program: shown, never changed. */
  readonly 'edit-read-only': { readonly document: 'design' | 'workshop' }
  readonly 'edit-not-found': { readonly what: string; readonly id: string }
  readonly 'edit-in-use': { readonly what: string; readonly id: string; readonly uses: number }
  readonly 'edit-no-room': { readonly field: string; readonly wanted: number; readonly room: number }
}

export type DocumentProblem = ProblemOf<DesignProblemCodes>
