import { beforeEach, expect, test, vi } from 'vitest'
import { webPreferences } from '../../../electron/shell/policy.ts'
import { openWindow } from '../../../electron/shell/window.ts'
import { recorder } from '../../support/fake-electron.ts'

beforeEach(() => recorder.reset())

test('the window is locked down in full and shows our own page', () => {
  openWindow('/preload.cjs')
  expect(recorder.windows.map(({ options, url }) => [options.webPreferences, url])).toEqual([
    [webPreferences('/preload.cjs'), 'lignebook://page/'],
  ])
})

test('it is shown once there is something to show, and fits a narrow screen', () => {
  openWindow('/preload.cjs')
  const [window] = recorder.windows
  if (!window) throw new Error('no window')
  expect(window.options).toMatchObject({ show: false, minWidth: 360 })
  const show = vi.spyOn(window, 'show')
  window.emit('ready-to-show')
  expect(show).toHaveBeenCalledOnce()
})
