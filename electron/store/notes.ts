import { type Library, run, write } from './library.ts'

/** What the library remembers of itself: when it was last backed up, by which proofs its counts were made. */
export type NoteName = 'last-backup' | 'counted-by'

/** What a note says, or null. */
export const readNote = async (library: Library, name: NoteName): Promise<string | null> => {
  const content = library.prepare('select content from note where name = ?').pluck().get(name)
  return typeof content === 'string' ? content : null
}

/** Sets what a note says; no change that could be taken back. */
export const writeNote = (library: Library, name: NoteName, content: string): void =>
  write(library, () => void run(library, library.db.replaceInto('note').values({ name, content })))
