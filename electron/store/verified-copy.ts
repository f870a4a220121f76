import { createHash } from 'node:crypto'
import { readFileSync, renameSync, rmSync } from 'node:fs'
import Database from 'better-sqlite3'

export interface VerifiedCopy {
  readonly file: string
  readonly calibers: number
  readonly sha256: string
}

const countOf = (connection: Database.Database): number =>
  Number(connection.prepare('select count(*) from caliber').pluck().get())

/** Copies an open library through SQLite, checks the copy whole, and only then gives it its name. */
export const copyVerified = (connection: Database.Database, target: string): VerifiedCopy => {
  const unfinished = `${target}.unfinished`
  rmSync(unfinished, { force: true })
  try {
    connection.prepare('vacuum into ?').run(unfinished)
    const calibers = countOf(connection)
    const copy = new Database(unfinished, { readonly: true, fileMustExist: true })
    try {
      if (copy.pragma('integrity_check', { simple: true }) !== 'ok') throw new Error('the copy is damaged')
      if (countOf(copy) !== calibers) throw new Error('the copy holds another number of calibers')
    } finally {
      copy.close()
    }
    const sha256 = createHash('sha256').update(readFileSync(unfinished)).digest('hex')
    renameSync(unfinished, target)
    return { file: target, calibers, sha256 }
  } catch (error) {
    rmSync(unfinished, { force: true })
    throw error
  }
}
