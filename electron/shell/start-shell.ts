import { join } from 'node:path'
import { app, BrowserWindow, dialog, Menu, session } from 'electron'
import { LignebookError } from '../../core/api/errors.ts'
import { wordFailure } from '../../core/wording/failure.ts'
import { readPageFiles } from '../page/page-files.ts'
import { libraryPlace } from '../service/library-place.ts'
import { openService } from '../service/open-service.ts'
import { answerCalls } from './calls.ts'
import { guardEveryPage, guardSession } from './guard.ts'
import { menuTemplate } from './menu.ts'
import { registerPageScheme, servePageFiles } from './page-protocol.ts'
import { openWindow } from './window.ts'

const run = async (): Promise<void> => {
  await app.whenReady()
  // Inside the package the demo library lies beside the program, so that it can be read as plain files.
  const demoFolder = join(app.isPackaged ? process.resourcesPath : app.getAppPath(), 'seed-data')
  const service = await openService({
    file: libraryPlace(process.env, process.platform),
    create: true,
    demoFolder,
    recount: true,
  })
  let closed = false
  app.on('will-quit', (event) => {
    if (closed) return
    event.preventDefault()
    void service.close().finally(() => {
      closed = true
      app.quit()
    })
  })

  guardSession(session.defaultSession)
  servePageFiles(session.defaultSession, readPageFiles(join(app.getAppPath(), 'out', 'page')))
  answerCalls(service.dispatch)
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)))

  const preload = join(app.getAppPath(), 'out', 'preload', 'preload.cjs')
  openWindow(preload)
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows()
    if (window?.isMinimized()) window.restore()
    window?.focus()
  })
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) openWindow(preload)
  })
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
}

/** Starts the desktop app. Sandbox, scheme and the single instance are settled before anything else is opened. */
export const startShell = async (): Promise<void> => {
  app.enableSandbox()
  registerPageScheme()
  if (!app.requestSingleInstanceLock()) return app.quit()
  guardEveryPage()
  try {
    await run()
  } catch (error) {
    // Only a failure made on purpose has words for a person; anything else must not show paths or queries.
    const failure = error instanceof LignebookError ? error.failure : { code: 'internal' as const, details: {} }
    console.error(error)
    dialog.showErrorBox('Lignebook cannot start', wordFailure(failure))
    app.exit(2)
  }
}
