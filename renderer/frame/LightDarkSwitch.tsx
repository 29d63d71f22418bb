import { useEffect } from 'react'
import { Icon } from '../icons/Icon'
import { useActions, useApp } from '../store/use-app'
import type { LightDark } from '../store/view'

const NEXT: Readonly<Record<LightDark, LightDark>> = { system: 'light', light: 'dark', dark: 'system' }
const NAMES: Readonly<Record<LightDark, string>> = { system: 'As the system', light: 'Light', dark: 'Dark' }
const KEPT = 'sillwright-light-dark'

const isKept = (text: string | null): text is LightDark => text !== null && text in NEXT

/** Light, dark, or as the system has it; remembered on this machine. */
export function LightDarkSwitch() {
  const chosen = useApp((state) => state.view.lightDark)
  const { look } = useActions()
  useEffect(() => {
    const kept = localStorage.getItem(KEPT)
    if (isKept(kept)) look({ lightDark: kept })
  }, [look])
  useEffect(() => {
    if (chosen === 'system') delete document.documentElement.dataset.lightDark
    else document.documentElement.dataset.lightDark = chosen
    window.dispatchEvent(new Event('inkchange'))
  }, [chosen])
  const turn = (): void => {
    localStorage.setItem(KEPT, NEXT[chosen])
    look({ lightDark: NEXT[chosen] })
  }
  return (
    <button type="button" className="button" title="Light or dark" onClick={turn}>
      <Icon name="light" />
      <span className="hidden-text">Light or dark: </span>
      {NAMES[chosen]}
    </button>
  )
}
