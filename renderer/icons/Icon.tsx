import type { ReactNode } from 'react'

/** Our own small set, drawn on a 24 × 24 field with one pen. */
const DRAWN = {
  board: <path d="M3 4h18M3 4v7M21 4v7M12 4v7M2.5 12h19v7h-19zM7.5 15.5h.01M12 15.5h.01M16.5 15.5h.01" />,
  cuts: <path d="M2.5 9h19v6h-19zM9 9v6M15 9v6M9 5.5v2M15 5.5v2" />,
  bench: <path d="M4 6h10v5H4zM14 7.5h3.5v2H14M20.5 8.5H17.5M6.5 11l1 8h3.5l-.5-4M4 19h8" />,
  materials: <path d="M4 8l8-4 8 4v8l-8 4-8-4zM4 8l8 4 8-4M12 12v8" />,
  price: <path d="M3.5 12.5V4.5h8l9 9-8 8zM8 9h.01" />,
  workshop: <path d="M3 20V10l9-6 9 6v10M8 20v-6h8v6M8 17h8" />,
  sheet: <path d="M6 3h9l4 4v14H6zM15 3v4h4M9 11h7M9 14.5h7M9 18h4" />,
  undo: <path d="M8 5L4 9l4 4M4 9h10a6 6 0 010 12h-3" />,
  redo: <path d="M16 5l4 4-4 4M20 9H10a6 6 0 000 12h3" />,
  menu: <path d="M4 7h16M4 12h16M4 17h16" />,
  choose: <path d="M6 3l12 9-5.5 1L16 20l-2.5 1-3.2-7L6 17.5z" />,
  channel: <path d="M2.5 9h19v6h-19zM5 9v6M19 9v6" />,
  site: <path d="M12 5a7 7 0 100 14 7 7 0 000-14zM12 9v6M9 12h6" />,
  measure: <path d="M4 5v14M20 5v14M4 12h16M2.5 13.5l3-3M18.5 13.5l3-3" />,
  pin: <path d="M4 4h16v11H11l-5 5v-5H4zM8 8h8M8 11h5" />,
  hand: (
    <path d="M8 12V6a1.5 1.5 0 013 0v5M11 10.5V4.5a1.5 1.5 0 013 0V11M14 10.5V6a1.5 1.5 0 013 0v8c0 4-2 6.5-5.5 6.5S6.5 18 4.5 14c1.5-1.5 2.5-1 3.5.5" />
  ),
  fit: <path d="M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5" />,
  target: <path d="M12 7a5 5 0 100 10 5 5 0 000-10zM12 3v4M12 17v4M3 12h4M17 12h4" />,
  zoomIn: <path d="M10.5 4a6.5 6.5 0 100 13 6.5 6.5 0 000-13zM15.5 15.5L20 20M10.5 7.5v6M7.5 10.5h6" />,
  zoomOut: <path d="M10.5 4a6.5 6.5 0 100 13 6.5 6.5 0 000-13zM15.5 15.5L20 20M7.5 10.5h6" />,
  copy: <path d="M8 8h12v6H8zM4 16V4h12" />,
  mirror: <path d="M12 3v18M9 7L3 17h6zM15 7l6 10h-6z" />,
  turn: <path d="M5 12a7 7 0 117 7M5 12l-2.5-3M5 12l3-2.5" />,
  remove: <path d="M5 7h14M10 7V4.5h4V7M7 7l1 13h8l1-13M10.5 10.5v6M13.5 10.5v6" />,
  snap: <path d="M6 4v8a6 6 0 0012 0V4h-4v8a2 2 0 01-4 0V4zM6 8h4M14 8h4" />,
  plus: <path d="M12 5v14M5 12h14" />,
  stop: <path d="M8.5 3h7L21 8.5v7L15.5 21h-7L3 15.5v-7zM8.5 8.5l7 7M15.5 8.5l-7 7" />,
  warn: <path d="M12 3.5L22 20.5H2zM12 9.5v5M12 17.5h.01" />,
  note: <path d="M12 3a9 9 0 100 18 9 9 0 000-18zM12 11v6M12 7.5h.01" />,
  good: <path d="M4.5 12.5l5 5 10-11" />,
  open: <path d="M3 19V6h6l2 2.5h8V11M3 19l3-8h16l-3 8z" />,
  save: <path d="M5 4h11l3 3v13H5zM8.5 4v5h6V4M8.5 20v-6h7v6" />,
  print: <path d="M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z" />,
  light: (
    <path d="M12 8a4 4 0 100 8 4 4 0 000-8zM12 2.5v2M12 19.5v2M2.5 12h2M19.5 12h2M5.5 5.5L7 7M17 17l1.5 1.5M5.5 18.5L7 17M17 7l1.5-1.5" />
  ),
  drop: <path d="M12 3.5c3.5 4.5 6 7.5 6 11a6 6 0 01-12 0c0-3.5 2.5-6.5 6-11z" />,
  plant: <path d="M12 21v-9M12 13c-4 0-6.5-2-7-6.5 4.5 0 7 2 7 6.5zM12 10c0-4 2.5-6 7-6 0 4.5-3 6.5-7 6.5M8 21h8" />,
  spread: <path d="M3 6v12M21 6v12M7.5 12h.01M12 12h.01M16.5 12h.01M10.5 8.5h3M10.5 15.5h3" />,
  lock: <path d="M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 017 0v3" />,
  close: <path d="M6 6l12 12M18 6L6 18" />,
  more: <path d="M6 9l6 6 6-6" />
} as const satisfies Readonly<Record<string, ReactNode>>

export type IconName = keyof typeof DRAWN

/** A small drawing beside words; the words name it, so it is hidden from a screen reader. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {DRAWN[name]}
    </svg>
  )
}
