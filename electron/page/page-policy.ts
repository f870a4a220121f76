/**
 * What the page may do, said once for both hosts that serve it. Styles set by script go through CSSOM, which
 * `style-src 'self'` allows; inline scripts, inline style text and everything remote stay out.
 */
const directives: Readonly<Record<string, string>> = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-src': "'none'",
  'frame-ancestors': "'none'",
}

export const contentSecurityPolicy: string = Object.entries(directives)
  .map(([name, sources]) => `${name} ${sources}`)
  .join('; ')

/** The headers of every answer of either host, page files and calls alike. */
export const pageHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentSecurityPolicy,
  'Cache-Control': 'no-store',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
}
