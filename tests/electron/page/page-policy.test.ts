import { expect, test } from 'vitest'
import { contentSecurityPolicy, pageHeaders } from '../../../electron/page/page-policy.ts'

const parsed = new Map(
  contentSecurityPolicy.split('; ').map((directive) => {
    const [name = '', ...sources] = directive.split(' ')
    return [name, sources] as const
  }),
)

test('nothing is allowed that is not named', () => expect(parsed.get('default-src')).toEqual(["'none'"]))

test('no directive lets in inline or evaluated code, a scheme of scripts, or another place', () => {
  const allowed = new Set(["'none'", "'self'", 'data:', 'blob:'])
  for (const sources of parsed.values()) for (const source of sources) expect(allowed).toContain(source)
  for (const name of ['script-src', 'style-src', 'connect-src', 'worker-src'])
    expect(parsed.get(name)).toEqual(["'self'"])
  for (const name of ['object-src', 'base-uri', 'form-action', 'frame-src', 'frame-ancestors']) {
    expect(parsed.get(name)).toEqual(["'none'"])
  }
})

test('the headers keep answers out of caches, other origins and Referer', () => {
  expect(pageHeaders).toMatchObject({
    'Cache-Control': 'no-store',
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Cross-Origin-Opener-Policy': 'same-origin',
  })
})
