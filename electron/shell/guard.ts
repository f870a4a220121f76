import { app, type Session, type WebContents } from 'electron'
import { isOwnUrl, permissionGranted } from './policy.ts'

/** Denies whatever a page may ask of the machine; both handlers are needed, since Electron grants by default. */
export const guardSession = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, permission, answer) => answer(permissionGranted(permission)))
  session.setPermissionCheckHandler((_contents, permission) => permissionGranted(permission))
  session.setDevicePermissionHandler(() => false)
  session.on('will-download', (event) => event.preventDefault())
}

const guardContents = (contents: WebContents): void => {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  contents.on('will-attach-webview', (event) => event.preventDefault())
  contents.on('will-navigate', (event) => {
    if (!isOwnUrl(event.url)) event.preventDefault()
  })
  contents.on('will-frame-navigate', (event) => {
    if (!isOwnUrl(event.url)) event.preventDefault()
  })
  contents.on('will-redirect', (event) => {
    if (!isOwnUrl(event.url)) event.preventDefault()
  })
}

/** Guards every page that is ever made, before it loads anything. */
export const guardEveryPage = (): void => {
  app.on('web-contents-created', (_event, contents) => guardContents(contents))
}
