import type { ReactNode } from 'react'

export interface StripPartProps {
  readonly title: string
  readonly children: ReactNode
  readonly open?: boolean
  /** What is in it, as a path in the design. */
  readonly path?: string
}

/** A part of the strip that folds away. */
export function StripPart({ title, children, open, path }: StripPartProps) {
  return (
    <details className="strip-part" data-path={path} open={open}>
      <summary>{title}</summary>
      <div className="strip-body">{children}</div>
    </details>
  )
}
