import { join } from 'node:path'
import { type Client, createClient } from '../../core/api/client.ts'
import { libraryPlace } from '../service/library-place.ts'
import { openService } from '../service/open-service.ts'
import { type CommandInput, UnusableInput } from './command.ts'

/**
 * The library that was named, or the user's own.
 * @throws UnusableInput where --library names nothing
 */
export const libraryOf = ({ options: { library }, io }: CommandInput): string => {
  if (library === '') throw new UnusableInput('Name the file of the library after --library.')
  return typeof library === 'string' ? library : libraryPlace(io.env, process.platform)
}

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
