import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { projectFolder, readSource, sourceFiles } from '../support/source-files.ts'

interface Example {
  readonly file: string
  readonly expression: string
  readonly expected: string
}

const examplesOf = (file: string): readonly Example[] =>
  [...readSource(file).matchAll(/@example\s*\n((?:\s*\*\s?(?!\s*[@/])[^\n]*\n)+)/g)].map((block) => {
    const text = (block[1] ?? '').replace(/^\s*\*\s?/gm, '').trim()
    const cut = text.lastIndexOf(' // ')
    return { file, expression: text.slice(0, cut).trim(), expected: text.slice(cut + 4).trim() }
  })

const examples = sourceFiles('core').flatMap(examplesOf)
const evaluate = (expression: string, scope: Readonly<Record<string, unknown>>): unknown =>
  new Function(...Object.keys(scope), `return (${expression})`)(...Object.values(scope))

test.each(examples.map((example) => [`${example.file}: ${example.expression}`, example] as const))(
  '%s',
  async (_name, example) => {
    const own: Record<string, unknown> = await import(`${projectFolder}${example.file}`)
    const found = evaluate(example.expression, { Fraction, ...own })
    const expected = evaluate(example.expected, {})
    if (typeof expected === 'number') expect(found).toBeCloseTo(expected, 3)
    else expect(found).toEqual(expected)
  },
)

test('every example is written so that it can be run', () => {
  const written = sourceFiles('core').flatMap((file) => readSource(file).match(/@example\b/g) ?? [])
  expect(examples).toHaveLength(written.length)
  for (const { file, expression, expected } of examples) expect(expression && expected, file).not.toBe('')
})

test('every formula says where it comes from, where it holds, and shows an example', () => {
  for (const file of sourceFiles('core/formulas')) {
    const source = readSource(file)
    for (const exported of source.matchAll(/((?:\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?)export const (\w+)\s*=\s*\(/g)) {
      for (const tag of ['@source', '@validity'])
        expect(exported[1], `${file}: ${exported[2]} has no ${tag}`).toContain(tag)
    }
  }
})
