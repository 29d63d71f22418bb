import { Icon, type IconName } from '../icons/Icon'

export interface ToolButtonProps {
  readonly icon: IconName
  readonly label: string
  readonly act: () => void
  readonly pressed?: boolean
  readonly disabled?: boolean
}

/** A drawing that stands for an act; its name shows on rest and is read out. */
export function ToolButton({ icon, label, act, pressed, disabled }: ToolButtonProps) {
  return (
    <button
      type="button"
      className="button"
      aria-label={label}
      aria-pressed={pressed}
      title={label}
      disabled={disabled}
      onClick={act}
    >
      <Icon name={icon} />
    </button>
  )
}
