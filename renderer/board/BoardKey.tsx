import type { ReactNode } from 'react'

/** What the marks of the drawing mean, folded away until it is asked for. */
export function BoardKey() {
  return (
    <details className="board-key small">
      <summary>Key</summary>
      <ul>
        <Entry says="Cup in its hole">
          <circle className="key-line" cx="12" cy="12" r="9" />
          <circle className="key-hole" cx="12" cy="12" r="6.5" />
          <path className="key-thin" d="M9 12h6M12 9v6" />
        </Entry>
        <Entry says="Service opening: fill port, drain, level sight">
          <rect className="key-thin" x="4" y="4" width="16" height="16" />
          <circle className="key-hole" cx="12" cy="12" r="6" />
        </Entry>
        <Entry says="Leaves at the chosen growth">
          <circle className="key-canopy" cx="12" cy="12" r="9" />
        </Entry>
        <Entry says="Datum end: positions are measured from here">
          <path className="key-solid" d="M4 12l10-6v12z" />
        </Entry>
        <Entry says="Centre of the whole mass, filled">
          <circle className="key-mass-line" cx="12" cy="12" r="8" />
          <path className="key-mass" d="M12 12V4a8 8 0 0 1 8 8zM12 12v8a8 8 0 0 1-8-8z" />
        </Entry>
        <Entry says="Support under a channel">
          <rect className="key-support" x="8" y="3" width="8" height="18" />
        </Entry>
        <Entry says="Locked site: stays when others are spread">
          <path className="key-line" d="M8 11V8a4 4 0 0 1 8 0v3" />
          <rect className="key-solid" x="6" y="11" width="12" height="8" />
        </Entry>
        <Entry says="Fit clearance kept from the sill’s edges">
          <rect className="key-thin key-dash" x="3" y="5" width="18" height="14" />
        </Entry>
      </ul>
    </details>
  )
}

function Entry({ says, children }: { readonly says: string; readonly children: ReactNode }) {
  return (
    <li>
      <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        {children}
      </svg>
      {says}
    </li>
  )
}
