import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import { createDispatcher, type Transport } from '../../core/api/dispatcher.ts'
import { openLibrary } from '../store/library.ts'
import { readDemoLibrary } from './demo-library.ts'
import { createHandlers } from './handlers.ts'

export interface Service {
  readonly dispatch: Transport
  readonly close: () => Promise<void>
}

export interface ServiceOptions {
  readonly file: string
  /** Whether a library is begun where there is none yet. */
  readonly create: boolean
  readonly demoFolder: string
}

/**
 * Opens a library and puts the calls before it; every host starts here.
 * @throws LignebookError where the file cannot be opened as a library
 */
export const openService = async ({ file, create, demoFolder }: ServiceOptions): Promise<Service> => {
  const now = () => new Date().toISOString()
  const makeFolder = (folder: string) => void mkdirSync(folder, { recursive: true })
  if (create) makeFolder(dirname(file))
  const library = await openLibrary(file, { create, now })
  const handlers = createHandlers(library, { readDemo: () => readDemoLibrary(demoFolder), now, makeFolder })
  return {
    dispatch: createDispatcher(handlers, (name, error) => console.error(`${name} failed:`, error)),
    close: () => library.close(),
  }
}
