import type { ReactNode } from 'react'

export interface StripPartProps {
  readonly title: string
  readonly children: ReactNode
  readonly open?: boolean
}

/** A part of the strip that folds away. */
export function StripPart({ title, children, open }: StripPartProps) {
  return (
    <details className="strip-part" open={open}>
      <summary>{title}</summary>
      <div className="strip-body">{children}</div>
    </details>
  )
}
