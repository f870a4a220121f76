import { describe, expect, test } from 'vitest'
import { readSource } from '../../support/source-files.ts'

const css = readSource('renderer/app/tokens.css').replace(/\/\*[\s\S]*?\*\//g, '')

/** The tokens of every rule whose selector the test accepts, later rules winning. */
const tokensOf = (accepts: (selector: string) => boolean): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
      .filter(([, selector]) => (selector ?? '').split(',').some((part) => accepts(part.trim())))
      .flatMap(([, , body]) =>
        [...(body ?? '').matchAll(/--([\w-]+)\s*:\s*(#[0-9a-f]{6})\b/gi)].map((m) => [m[1], m[2]]),
      ),
  )

/** Relative luminance and contrast: WCAG 2.2, "relative luminance" and success criterion 1.4.3. */
const luminance = (hex: string): number => {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0)
}
const contrast = (a: string, b: string): number => {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y)
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05)
}

const day = tokensOf((selector) => selector === ':root')
const night = { ...day, ...tokensOf((selector) => /data-theme=["']?night/.test(selector)) }

test('the contrast of black on white is 21', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
})

describe.each([
  ['day', day],
  ['night', night],
])('by %s', (_theme, tokens) => {
  const pairs = ['ink', 'ink-2', 'steel', 'agree', 'doubt', 'disagree'].flatMap((text) =>
    ['paper', 'sheet', 'band'].map((ground) => [text, ground] as const),
  )
  test.each(pairs)('%s is readable on %s', (text, ground) => {
    const [on, under] = [tokens[text], tokens[ground]]
    expect(on, `--${text} is a colour`).toBeDefined()
    expect(under, `--${ground} is a colour`).toBeDefined()
    expect(contrast(on ?? '', under ?? '')).toBeGreaterThanOrEqual(4.5)
  })
})

test('night differs from day', () => {
  expect(night.paper).not.toBe(day.paper)
})
