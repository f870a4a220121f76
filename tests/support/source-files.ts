import { readdirSync, readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The project folder, with its trailing slash. */
export const projectFolder = fileURLToPath(new URL('../../', import.meta.url))

/** Every .ts and .tsx file below a room, as paths from the project folder. */
export const sourceFiles = (room: string, folder: string = projectFolder): readonly string[] =>
  readdirSync(`${folder}${room}`, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts'))
    .map((entry) => relative(folder, `${entry.parentPath}/${entry.name}`))
    .toSorted()

export const readSource = (file: string): string => readFileSync(`${projectFolder}${file}`, 'utf8')
