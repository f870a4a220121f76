import { expect, test } from 'vitest'
import { menuTemplate } from '../../../electron/shell/menu.ts'

test('the menu is made of roles, with the app menu on macOS alone', () => {
  const roles = (platform: NodeJS.Platform) => JSON.stringify(menuTemplate(platform))
  expect(roles('darwin')).toContain('appMenu')
  expect(roles('linux')).not.toContain('appMenu')
  for (const role of ['editMenu', 'zoomIn', 'zoomOut', 'resetZoom', 'quit'])
    expect(roles('linux')).toContain(`"${role}"`)
  expect(roles('linux')).not.toContain('DevTools')
})
