import type { IncomingMessage } from 'node:http'

/** Why a request is turned away: the status, and a word for the log. */
export interface Refusal {
  readonly status: number
  readonly why: string
}

/** Every value of a header, as it came: Node itself quietly takes the first of two. */
const allOf = (request: IncomingMessage, name: string): string[] =>
  request.rawHeaders.filter((_, i, raw) => i % 2 === 1 && raw[i - 1]?.toLowerCase() === name)

/**
 * The check before all others, page files and upgrades included: one Host, byte for byte our own address.
 * It is all that gives a rebound name away, since Chromium then sends neither Origin nor Sec-Fetch-Site.
 */
export const refuseHost = (request: IncomingMessage, address: string): Refusal | null => {
  const hosts = allOf(request, 'host')
  return hosts.length === 1 && hosts[0] === address ? null : { status: 421, why: 'host' }
}

/** The target must be a plain path: no full address, no second slash that would name a host. */
export const refuseTarget = (target: string | undefined): Refusal | null =>
  target !== undefined && /^\/(?![/\\])/.test(target) ? null : { status: 400, why: 'target' }

/** A caller that is a browser must be our own page; a caller that writes must say so itself, by Origin. */
export const refuseCaller = (request: IncomingMessage, origin: string, write: boolean): Refusal | null => {
  const sites = allOf(request, 'sec-fetch-site')
  if (sites.some((site) => site !== 'same-origin')) return { status: 403, why: 'site' }
  const origins = allOf(request, 'origin')
  if (origins.some((one) => one !== origin) || origins.length > 1) return { status: 403, why: 'origin' }
  if (write && origins.length === 0) return { status: 403, why: 'origin' }
  return null
}

/** Only JSON is read; a form on another page cannot send it without asking first. */
export const refuseBody = (request: IncomingMessage): Refusal | null => {
  const kinds = allOf(request, 'content-type')
  return kinds.length === 1 && /^application\/json(; ?charset=utf-8)?$/i.test(kinds[0] ?? '')
    ? null
    : { status: 415, why: 'type' }
}

/** The token of `Authorization: Bearer …`, or null where there is none. */
export const bearerOf = (request: IncomingMessage): string | null => {
  const all = allOf(request, 'authorization')
  return (all.length === 1 && /^Bearer ([\w-]{1,200})$/.exec(all[0] ?? '')?.[1]) || null
}
