import type { MenuItemConstructorOptions } from 'electron'

const separator: MenuItemConstructorOptions = { type: 'separator' }

/** The menu, by roles, so that names and keys are those of the platform. Undo here is that of typing. */
export const menuTemplate = (platform: NodeJS.Platform): MenuItemConstructorOptions[] => [
  ...(platform === 'darwin' ? [{ role: 'appMenu' } satisfies MenuItemConstructorOptions] : []),
  { label: 'File', submenu: [platform === 'darwin' ? { role: 'close' } : { role: 'quit' }] },
  { role: 'editMenu' },
  {
    label: 'View',
    submenu: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, separator, { role: 'togglefullscreen' }],
  },
  { role: 'windowMenu' },
]
