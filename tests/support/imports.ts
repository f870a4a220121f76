import { posix } from 'node:path'

export interface Import {
  readonly of: string
  readonly dynamic: boolean
  /** True for `import type`, which leaves nothing in the running code. */
  readonly typeOnly: boolean
}

/** Every import and re-export of a source text, static and dynamic; comments are passed over. */
export const importsOf = (source: string): readonly Import[] => {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '')
  const fixed = /^\s*(?:import|export)\s+(type\s+)?(?:[\w*{}\s,$]+?\sfrom\s+)?['"]([^'"\n]+)['"]/gm
  const moving = /\bimport\s*\(\s*(?:\/\*.*?\*\/\s*)?(?:['"`]([^'"`\n]*)['"`])?/g
  return [
    ...[...code.matchAll(fixed)].map((m) => ({ of: m[2] ?? '', dynamic: false, typeOnly: m[1] !== undefined })),
    ...[...code.matchAll(moving)].map((m) => ({ of: m[1] ?? '(computed)', dynamic: true, typeOnly: false })),
  ]
}

/** Where a relative import of a file leads, as a path from the project folder; a package stays itself. */
export const targetOf = (file: string, specifier: string): string =>
  specifier.startsWith('.') ? posix.join(posix.dirname(file), specifier) : specifier
