import { readdirSync, readFileSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'

export interface PageFile {
  readonly bytes: Buffer<ArrayBuffer>
  readonly type: string
}

/** The built page: exact URL path → file. Nothing outside it can be asked for, so no path is ever worked out from input. */
export type PageFiles = ReadonlyMap<string, PageFile>

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
}

/** Reads the built page into memory. Links are not followed, and files of a type that no page needs are left out. */
export const readPageFiles = (folder: string): PageFiles => {
  const files = new Map<string, PageFile>()
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const type = types[extname(entry.name)]
    if (!entry.isFile() || type === undefined) continue
    const file = join(entry.parentPath, entry.name)
    files.set(`/${relative(folder, file).split(sep).join('/')}`, { bytes: readFileSync(file), type })
  }
  const index = files.get('/index.html')
  if (index) files.set('/', index)
  return files
}
