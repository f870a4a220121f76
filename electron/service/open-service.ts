import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import { createDispatcher, type Transport } from '../../core/api/dispatcher.ts'
import { openLibrary } from '../store/library.ts'
import { sqliteFailure } from '../store/sqlite-failure.ts'
import { readDemoLibrary } from './demo-library.ts'
import { createHandlers } from './handlers.ts'
import { recountLibrary } from './recount-library.ts'

export interface Service {
  readonly dispatch: Transport
  readonly close: () => Promise<void>
}

export interface ServiceOptions {
  readonly file: string
  /** Whether a library is begun where there is none yet. */
  readonly create: boolean
  readonly demoFolder: string
  /** Whether counts made by an earlier version’s proofs are made again, meanwhile; a page shows them, a command does not. */
  readonly recount?: boolean
}

/**
 * Opens a library and puts the calls before it; every host starts here.
 * @throws LignebookError where the file cannot be opened as a library
 */
export const openService = async ({ file, create, demoFolder, recount = false }: ServiceOptions): Promise<Service> => {
  const now = () => new Date().toISOString()
  const makeFolder = (folder: string) => void mkdirSync(folder, { recursive: true })
  try {
    if (create) makeFolder(dirname(file))
  } catch (error) {
    throw sqliteFailure(error, file)
  }
  const library = await openLibrary(file, { create, now })
  const handlers = createHandlers(library, { readDemo: () => readDemoLibrary(demoFolder), now, makeFolder })
  let closed = false
  const counting = recount ? recountLibrary(library, () => closed) : Promise.resolve()
  // Counts that could not be made stand as they were; the next start tries again.
  const counted = counting.catch((error: unknown) => console.error('counting the findings failed:', error))
  return {
    dispatch: createDispatcher(handlers, (name, error) => console.error(`${name} failed:`, error)),
    close: async () => {
      closed = true
      await counted
      await library.close()
    },
  }
}
