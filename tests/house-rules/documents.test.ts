import { existsSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contract } from '../../core/api/contract.ts'
import { caliberFields } from '../../core/fields/caliber-fields.ts'
import { proofs } from '../../core/proofs/index.ts'
import { projectFolder, readSource } from '../support/source-files.ts'

const scripts = Object.keys((JSON.parse(readSource('package.json')) as { scripts: Record<string, string> }).scripts)

/** Figures that a document may give, each with what it counts. */
const counts: Readonly<Record<string, number>> = {
  fields: Object.keys(caliberFields).length,
  proofs: proofs.length,
  calls: Object.keys(contract).length,
}

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (document) => {
  const text = existsSync(`${projectFolder}${document}`) ? readSource(document) : ''

  test('is there', () => expect(text).not.toBe(''))

  test('names only scripts that there are', () => {
    const named = [...text.matchAll(/npm run (?:-s )?([\w:-]+)/g)].map((match) => match[1] ?? '')
    expect(named.filter((name) => !scripts.includes(name))).toEqual([])
  })

  test('links only to files that there are', () => {
    const links = [...text.matchAll(/\]\((?!https?:|#)([^)#\s]+)/g)].map((match) => match[1] ?? '')
    expect(links.filter((link) => !existsSync(`${projectFolder}${link}`))).toEqual([])
  })

  test('gives the figures of the code', () => {
    for (const [, figure, what] of text.matchAll(/\b(\d+) (fields|proofs|calls)\b/g)) {
      expect(Number(figure), `${figure} ${what}`).toBe(counts[what ?? ''])
    }
  })
})
