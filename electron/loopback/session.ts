import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'

const secret = (): string => randomBytes(32).toString('base64url')

/** Compares in a time that tells nothing, whatever the lengths. */
const same = (left: string, right: string): boolean =>
  timingSafeEqual(createHash('sha256').update(left).digest(), createHash('sha256').update(right).digest())

/** How long a one-time code opens the page. */
const codeLivesMs = 60_000

/** Wrong codes and tokens after which all are withdrawn until a fresh code is made. */
const wrongAllowed = 32

export interface Session {
  /** A one-time code; the one before it no longer opens anything. */
  newCode: () => string
  /** The token for a code, once and within its time. */
  exchange: (code: string) => string | null
  accepts: (token: string) => boolean
}

/** Who may call: one token a start, handed over against a one-time code. `now` is in milliseconds. */
export const createSession = (now: () => number): Session => {
  let token = secret()
  let code: { text: string; until: number } | null = null
  let wrong = 0

  const countWrong = () => {
    wrong += 1
    if (wrong < wrongAllowed) return
    code = null
    token = secret()
  }

  return {
    newCode: () => {
      wrong = 0
      code = { text: secret(), until: now() + codeLivesMs }
      return code.text
    },
    exchange: (text) => {
      if (wrong >= wrongAllowed) return null
      if (code === null || !same(text, code.text)) {
        countWrong()
        return null
      }
      const inTime = now() <= code.until
      code = null
      return inTime ? token : null
    },
    accepts: (text) => {
      if (wrong >= wrongAllowed) return false
      if (same(text, token)) return true
      countWrong()
      return false
    },
  }
}
