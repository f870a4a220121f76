import { mkdirSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Client, createClient } from '../../../core/api/client.ts'
import { createDispatcher } from '../../../core/api/dispatcher.ts'
import { readDemoLibrary } from '../../../electron/service/demo-library.ts'
import { createHandlers } from '../../../electron/service/handlers.ts'
import { openLibrary } from '../../../electron/store/library.ts'

export interface TestLibrary {
  readonly call: Client
  readonly close: () => Promise<void>
}

/** A new library in a folder of its own, with a clock that goes on a second a look. */
export const openTestLibrary = async (): Promise<TestLibrary> => {
  const file = join(mkdtempSync(join(tmpdir(), 'service-')), 'library.sqlite')
  let seconds = 0
  const now = () => new Date(Date.UTC(2026, 0, 1, 0, 0, seconds++)).toISOString()
  const library = await openLibrary(file, { create: true, now })
  const handlers = createHandlers(library, {
    readDemo: () => readDemoLibrary('seed-data'),
    now,
    makeFolder: (folder) => void mkdirSync(folder, { recursive: true }),
  })
  const dispatch = createDispatcher(handlers, (_, error) => {
    throw error
  })
  return { call: createClient(dispatch), close: () => library.close() }
}
