import { basename } from 'node:path'
import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand } from '../bridge/contract'

export interface MenuActs {
  /** A command for the page of the window in front. */
  readonly command: (name: MenuCommand) => void
  readonly newWindow: () => void
  readonly openRecent: (path: string) => void
}

/** The native menu: the platform's own roles, the page's commands by name, and the designs last used. */
export function menuTemplate(
  platform: NodeJS.Platform,
  recent: readonly string[],
  { command, newWindow, openRecent }: MenuActs
): MenuItemConstructorOptions[] {
  const item = (label: string, name: MenuCommand, accelerator: string): MenuItemConstructorOptions => ({
    label,
    accelerator,
    click: () => command(name)
  })
  const mac = platform === 'darwin'
  // macOS keeps the list itself and hands a choice back as `open-file`; elsewhere the list is the program's own.
  const recents: MenuItemConstructorOptions = mac
    ? { role: 'recentDocuments', submenu: [{ role: 'clearRecentDocuments' }] }
    : {
        label: 'Open recent',
        enabled: recent.length > 0,
        submenu: recent.map((path) => ({ label: labelOf(path), toolTip: path, click: () => openRecent(path) }))
      }
  return [
    ...(mac ? [{ role: 'appMenu' } satisfies MenuItemConstructorOptions] : []),
    {
      label: '&File',
      submenu: [
        item('New design', 'new', 'CmdOrCtrl+N'),
        { label: 'New window', accelerator: 'CmdOrCtrl+Shift+N', click: newWindow },
        item('Open…', 'open', 'CmdOrCtrl+O'),
        recents,
        { type: 'separator' },
        item('Save', 'save', 'CmdOrCtrl+S'),
        item('Save as…', 'save-as', 'CmdOrCtrl+Shift+S'),
        { type: 'separator' },
        item('Print build sheet…', 'print', 'CmdOrCtrl+P'),
        { type: 'separator' },
        { role: 'close' },
        ...(mac ? [] : [{ role: 'quit' } satisfies MenuItemConstructorOptions])
      ]
    },
    {
      label: '&Edit',
      submenu: [
        item('Undo', 'undo', 'CmdOrCtrl+Z'),
        item('Redo', 'redo', mac ? 'Cmd+Shift+Z' : 'Ctrl+Y'),
        { type: 'separator' },
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' }
      ]
    },
    {
      label: '&View',
      submenu: [
        item('Fit the sill', 'zoom-to-fit', 'CmdOrCtrl+9'),
        { type: 'separator' },
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        { role: 'togglefullscreen' }
      ]
    },
    { role: 'windowMenu' }
  ]
}

/** A file's name as a menu shows it: an ampersand would be taken for the mark of a key. */
const labelOf = (path: string): string => basename(path).replaceAll('&', '&&')
