import type { LibraryFile } from './library-file.ts'

/** Writes a library file: JSON, indented for people who compare two of them. */
export const writeLibraryFile = (file: LibraryFile): string => `${JSON.stringify(file, null, 2)}\n`
