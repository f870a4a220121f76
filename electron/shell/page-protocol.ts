import { protocol, type Session } from 'electron'
import type { PageFiles } from '../page/page-files.ts'
import { pageHeaders } from '../page/page-policy.ts'
import { pageScheme, resolveAsset, schemePrivileges } from './policy.ts'

/** Must run once, before the app is ready. */
export const registerPageScheme = (): void =>
  protocol.registerSchemesAsPrivileged([{ scheme: pageScheme, privileges: { ...schemePrivileges } }])

/** Answers the page's own addresses from the closed list of its files, and nothing else. */
export const servePageFiles = (session: Session, files: PageFiles): void =>
  session.protocol.handle(pageScheme, ({ url, method }) => {
    const file = method === 'GET' ? resolveAsset(url, files) : undefined
    return file
      ? new Response(file.bytes, { headers: { ...pageHeaders, 'Content-Type': file.type } })
      : new Response(null, { status: 404, headers: { ...pageHeaders } })
  })
