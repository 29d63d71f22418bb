import type { ReactNode } from 'react'

export interface PageProps {
  readonly title: string
  readonly says: string
  /** The screen's one primary action. */
  readonly action?: ReactNode
  readonly children: ReactNode
}

/** A screen: what it is for in a sentence, its one primary action, and its parts. */
export function Page({ title, says, action, children }: PageProps) {
  return (
    <div className="page">
      <header className="page-head">
        <div>
          <h1>{title}</h1>
          <p>{says}</p>
        </div>
        {action}
      </header>
      {children}
    </div>
  )
}
