import { type ReactNode, useEffect, useId, useRef, useState } from 'react'
import { Icon, type IconName } from '../icons/Icon'

export interface MenuButtonProps {
  readonly label: string
  readonly icon: IconName
  readonly onOpen?: () => void
  readonly children: ReactNode
}

/** A button that opens a short list; Escape or a click elsewhere closes it. */
export function MenuButton({ label, icon, onOpen, children }: MenuButtonProps) {
  const [open, setOpen] = useState(false)
  const holder = useRef<HTMLDivElement>(null)
  const button = useRef<HTMLButtonElement>(null)
  const id = useId()
  useEffect(() => {
    if (!open) return
    onOpen?.()
    const away = (event: PointerEvent): void => {
      if (event.target instanceof Node && holder.current?.contains(event.target) === false) setOpen(false)
    }
    const key = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return
      setOpen(false)
      button.current?.focus()
    }
    window.addEventListener('pointerdown', away)
    window.addEventListener('keydown', key)
    return () => {
      window.removeEventListener('pointerdown', away)
      window.removeEventListener('keydown', key)
    }
  }, [open, onOpen])
  return (
    <div className="menu" ref={holder}>
      <button
        ref={button}
        type="button"
        className="button"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        <Icon name={icon} />
        {label}
        <Icon name="more" />
      </button>
      {open ? (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the buttons inside take the keys; a click that reaches here only closes the list
        // biome-ignore lint/a11y/noStaticElementInteractions: as above
        <div className="menu-list" id={id} onClick={() => setOpen(false)}>
          {children}
        </div>
      ) : null}
    </div>
  )
}
