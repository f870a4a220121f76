import { join } from 'node:path'
import { type Client, createClient } from '../../core/api/client.ts'
import { libraryPlace } from '../service/library-place.ts'
import { openService } from '../service/open-service.ts'
import type { CommandInput } from './command.ts'

/** The library that was named, or the user's own. */
export const libraryOf = ({ options, io }: CommandInput): string =>
  typeof options.library === 'string' ? options.library : libraryPlace(io.env, process.platform)

/** Opens the library that was named, or the user's own, for as long as the work takes. */
export const withLibrary = async <T>(
  input: CommandInput,
  { create, file = libraryOf(input) }: { readonly create: boolean; readonly file?: string },
  work: (call: Client) => Promise<T>,
): Promise<T> => {
  const demoFolder = join(import.meta.dirname, '..', '..', 'seed-data')
  const service = await openService({ file, create, demoFolder })
  try {
    return await work(createClient(service.dispatch))
  } finally {
    await service.close()
  }
}
