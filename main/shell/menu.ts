import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand } from '../bridge/contract'

/** The native menu: the platform's own roles, and the page's commands by name. */
export function menuTemplate(
  platform: NodeJS.Platform,
  command: (name: MenuCommand) => void
): MenuItemConstructorOptions[] {
  const item = (label: string, name: MenuCommand, accelerator: string): MenuItemConstructorOptions => ({
    label,
    accelerator,
    click: () => command(name)
  })
  const mac = platform === 'darwin'
  return [
    ...(mac ? [{ role: 'appMenu' } satisfies MenuItemConstructorOptions] : []),
    {
      label: '&File',
      submenu: [
        item('New design', 'new', 'CmdOrCtrl+N'),
        item('Open…', 'open', 'CmdOrCtrl+O'),
        { role: 'recentDocuments', submenu: [{ role: 'clearRecentDocuments' }] },
        { type: 'separator' },
        item('Save', 'save', 'CmdOrCtrl+S'),
        item('Save as…', 'save-as', 'CmdOrCtrl+Shift+S'),
        { type: 'separator' },
        item('Print build sheet…', 'print', 'CmdOrCtrl+P'),
        { type: 'separator' },
        { role: mac ? 'close' : 'quit' }
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
