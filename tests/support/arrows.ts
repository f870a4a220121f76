import { importsOf, targetOf } from './imports.ts'

interface Room {
  /** Path from the project folder; the longest that fits a file is its room. */
  readonly room: string
  /** Rooms, packages (a trailing * takes any ending) that it may import. */
  readonly may: readonly string[]
  readonly mayLater?: true
}

const node = 'node:*'

/** The arrows between the rooms, and no others. */
const rooms: readonly Room[] = [
  { room: 'core/', may: ['core/', 'zod', 'fraction.js'] },
  { room: 'migrations/', may: ['migrations/', 'kysely'] },
  { room: 'seed-data/', may: ['seed-data/', 'core/', node], mayLater: true },
  {
    room: 'electron/store/',
    may: ['zod', 'electron/store/', 'core/', 'migrations/', 'kysely', 'better-sqlite3', node],
    mayLater: true,
  },
  {
    room: 'electron/service/',
    may: ['zod', 'papaparse', 'electron/service/', 'electron/store/', 'core/', 'seed-data/', node],
    mayLater: true,
  },
  { room: 'electron/page/', may: ['electron/page/', 'core/', node] },
  { room: 'electron/preload/', may: ['electron', 'vite', node] },
  {
    room: 'electron/shell/',
    may: [
      'zod',
      'electron/shell/',
      'electron/page/',
      'electron/service/',
      'electron/store/library.ts',
      'core/api/',
      'core/wording/',
      'electron',
      'vite',
      node,
    ],
    mayLater: true,
  },
  {
    room: 'electron/loopback/',
    may: [
      'zod',
      'electron/loopback/',
      'electron/page/',
      'electron/service/',
      'electron/store/library.ts',
      'core/api/',
      'core/wording/',
      node,
    ],
    mayLater: true,
  },
  {
    room: 'electron/terminal/',
    may: ['zod', 'electron/terminal/', 'electron/service/', 'electron/store/library.ts', 'core/', node],
    mayLater: true,
  },
  { room: 'electron/', may: ['electron/', 'core/api/', 'core/wording/', 'vite', 'electron', node], mayLater: true },
  {
    room: 'renderer/',
    may: [
      'renderer/',
      'core/',
      'zod',
      'fraction.js',
      'react',
      'react/*',
      'react-dom',
      'react-dom/*',
      '@tanstack/*',
      'react-aria-components',
      'react-aria-components/*',
      'wouter',
      'wouter/*',
      'lucide-react',
      '@fontsource*',
      'papaparse',
      'pdfjs-dist',
      'pdfjs-dist/*',
    ],
    mayLater: true,
  },
  { room: 'renderer/vite.config.ts', may: ['vite', '@vitejs/*', node] },
]

const covers = (allowed: string, target: string): boolean =>
  allowed.endsWith('/') || allowed.endsWith('*') ? target.startsWith(allowed.replace(/\*$/, '')) : target === allowed

/** What a file imports against the arrows, each as a sentence. */
export const brokenArrows = (file: string, source: string): readonly string[] => {
  const home = rooms.filter(({ room }) => file.startsWith(room)).toSorted((a, b) => b.room.length - a.room.length)[0]
  if (home === undefined) return [`${file} stands in no room`]
  return importsOf(source).flatMap(({ of, dynamic }) => {
    const target = targetOf(file, of)
    if (dynamic && home.mayLater !== true) return [`${file} imports ${of} at run time, which ${home.room} may not`]
    if (dynamic && of === '(computed)') return []
    return home.may.some((allowed) => covers(allowed, target)) ? [] : [`${file} imports ${target}`]
  })
}
