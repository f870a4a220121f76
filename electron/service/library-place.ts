import { homedir } from 'node:os'
import { join } from 'node:path'

/** Where the user's own library stands on this system; LIGNEBOOK_LIBRARY names another. */
export const libraryPlace = (
  env: Readonly<Record<string, string | undefined>>,
  platform: string,
  home: string = homedir(),
): string => {
  if (env.LIGNEBOOK_LIBRARY) return env.LIGNEBOOK_LIBRARY
  const data =
    platform === 'darwin'
      ? join(home, 'Library', 'Application Support')
      : platform === 'win32'
        ? (env.APPDATA ?? join(home, 'AppData', 'Roaming'))
        : (env.XDG_DATA_HOME ?? join(home, '.local', 'share'))
  return join(data, 'Lignebook', 'library.sqlite')
}
