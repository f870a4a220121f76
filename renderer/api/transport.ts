import type { Transport } from '../../core/api/dispatcher.ts'
import type { Answer } from '../../core/api/errors.ts'

declare global {
  interface Window {
    /** Put there by the preload script in the window; absent in a browser. */
    readonly lignebook?: { readonly call: (name: string, input: unknown) => Promise<Answer> }
  }
}

const tokenName = 'lignebook.token'

const post = (path: string, body: unknown, headers: Readonly<Record<string, string>> = {}) =>
  fetch(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', ...headers },
    body: JSON.stringify(body),
    cache: 'no-store',
  })

/** Hands the one-time code in the address over for a token, and takes the code out of the address and the history. */
const handOverCode = async (): Promise<void> => {
  const code = /^#code=([\w-]+)$/.exec(location.hash)?.[1]
  if (code === undefined) return
  history.replaceState(null, '', `${location.pathname}#/`)
  // Hash routing learns of a new address by this event alone.
  dispatchEvent(new HashChangeEvent('hashchange'))
  const response = await post('session', { code })
  if (!response.ok) return
  const { token } = (await response.json()) as { token?: unknown }
  if (typeof token === 'string') sessionStorage.setItem(tokenName, token)
}

let handedOver: Promise<void> | undefined

const fromBrowser: Transport = async (name, input) => {
  handedOver ??= handOverCode()
  await handedOver
  const token = sessionStorage.getItem(tokenName) ?? ''
  try {
    const response = await post(`api/${name}`, input, { Authorization: `Bearer ${token}` })
    return (await response.json()) as Answer
  } catch {
    return { ok: false, failure: { code: 'forbidden', details: {} } }
  }
}

/** Reaches the library through the window's bridge where there is one, and by the loopback address elsewhere. */
export const transport: Transport = (name, input) =>
  window.lignebook === undefined ? fromBrowser(name, input) : window.lignebook.call(name, input)
