import { type ReactNode, useState } from 'react'

export interface StripPartProps {
  readonly title: string
  readonly children: ReactNode
  readonly open?: boolean
  /** What is in it, as a path in the design. */
  readonly path?: string
}

/** A part of the strip that folds away. */
export function StripPart({ title, children, open, path }: StripPartProps) {
  const [unfolded, setUnfolded] = useState(open === true)
  return (
    <details
      className="strip-part"
      data-path={path}
      open={open}
      onToggle={(event) => setUnfolded(event.currentTarget.open)}
    >
      <summary>{title}</summary>
      <div className="strip-body">{unfolded ? children : null}</div>
    </details>
  )
}
