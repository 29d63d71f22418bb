import { useEffect } from 'react'
import { hostText } from '../documents/open-documents'
import { useServices } from '../documents/use-documents'
import type { Command } from '../host/host'
import { useAppStore } from '../store/use-app'

/** Keys of the platform and entries of the desktop's menu come out as the same commands. */
export function useShortcuts(startNew: () => void): void {
  const store = useAppStore()
  const { documents, host } = useServices()
  useEffect(() => {
    const take = (command: Command): void => {
      const act: Readonly<Record<Command, () => unknown>> = {
        new: startNew,
        open: documents.open,
        save: () => documents.save(),
        'save-as': () => documents.save(true),
        undo: store.do.undo,
        redo: store.do.redo,
        print: () => store.do.look({ screen: 'sheet' }),
        'zoom-to-fit': () => window.dispatchEvent(new Event('board-fit')),
        close: documents.close
      }
      act[command]()
    }
    const key = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return
      const command = commandOf(event)
      if (command === null || (isTyping(event.target) && (command === 'undo' || command === 'redo'))) return
      event.preventDefault()
      // A key held down takes step after step back, but saves or prints once.
      if (!event.repeat || command === 'undo' || command === 'redo') take(command)
    }
    window.addEventListener('keydown', key)
    const stopCommands = host.onCommand(take)
    const stopTrouble = host.onTrouble((problem) => store.do.look({ notice: { text: hostText(problem) } }))
    const stopFiles = host.onOpenedFile((file) => void documents.take(file))
    return () => {
      window.removeEventListener('keydown', key)
      stopCommands()
      stopTrouble()
      stopFiles()
    }
  }, [store, documents, host, startNew])
}

function commandOf(event: KeyboardEvent): Command | null {
  const key = event.key.toLowerCase()
  if (key === 's') return event.shiftKey ? 'save-as' : 'save'
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo'
  if (event.shiftKey) return null
  if (key === 'y') return 'redo'
  if (key === 'o') return 'open'
  if (key === 'p') return 'print'
  if (key === '0') return 'zoom-to-fit'
  return null
}

/** Undo inside a field that is being typed in belongs to the field. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && target.type === 'text' && isChanged(target))

const isChanged = (input: HTMLInputElement): boolean => input.value !== input.defaultValue
