import type { WebPreferences } from 'electron'
import type { PageFile, PageFiles } from '../page/page-files.ts'

export const pageScheme = 'lignebook'
const pageHost = 'page'
export const pageUrl = `${pageScheme}://${pageHost}/`

/** What the page's scheme may do; it neither skips the page policy nor takes service workers. */
export const schemePrivileges = { standard: true, secure: true, supportFetchAPI: true } as const

/** Written out in full, so that no change of Electron's defaults loosens a window. */
export const webPreferences = (preload: string): WebPreferences => ({
  preload,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  contextIsolation: true,
  sandbox: true,
  webviewTag: false,
  navigateOnDragDrop: false,
  spellcheck: false,
})

/**
 * True for an address of our own page. Scheme and host are compared as they stand: the `origin` of a scheme that
 * Node does not know is the word null, which every other such scheme would equal.
 */
export const isOwnUrl = (text: string): boolean => {
  if (!URL.canParse(text)) return false
  const url = new URL(text)
  return url.protocol === `${pageScheme}:` && url.host === pageHost && url.username === '' && url.password === ''
}

/** The page file of an address, by exact path among the files that were read at the start. */
export const resolveAsset = (text: string, files: PageFiles): PageFile | undefined => {
  if (!isOwnUrl(text)) return undefined
  const url = new URL(text)
  return url.search === '' ? files.get(url.pathname) : undefined
}

/** What can be told of the frame behind a call. */
export interface CallingFrame {
  readonly url: string
  readonly parent: unknown
}

/** A call must come from the top frame of our own page; the frame is null once it has gone elsewhere. */
export const senderOk = (frame: CallingFrame | null): boolean =>
  frame !== null && frame.parent === null && isOwnUrl(frame.url)

/** The page needs no permission of any kind, known today or named tomorrow. */
export const permissionGranted = (_permission: string): boolean => false
