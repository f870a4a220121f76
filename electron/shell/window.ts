import { BrowserWindow } from 'electron'
import { pageUrl, webPreferences } from './policy.ts'

/** Opens the one window; it shows itself when the page has something to show. */
export const openWindow = (preload: string): BrowserWindow => {
  const window = new BrowserWindow({
    width: 1280,
    height: 860,
    minWidth: 360,
    minHeight: 480,
    show: false,
    title: 'Lignebook',
    webPreferences: webPreferences(preload),
  })
  window.once('ready-to-show', () => window.show())
  void window.loadURL(pageUrl)
  return window
}
