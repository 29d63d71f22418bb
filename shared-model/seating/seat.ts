/** What sits in a site's hole, from the hole up; each part sits in the one below. A template shared by sites. */
export interface Seat {
  readonly id: string
  readonly name: string
  /** The saw that cuts the hole in the face. */
  readonly sawId: string
  readonly stack: readonly StackItem[]
}

export type StackItem =
  | { readonly kind: 'riser'; readonly partId: string }
  | { readonly kind: 'collar'; readonly partId: string }
  | { readonly kind: 'cup'; readonly partId: string }
  | { readonly kind: 'plant-collar'; readonly partId: string }
