/** What the owner prefers on this machine, kept between starts; null where nothing was kept. */
export const kept = (name: string): string | null => localStorage.getItem(`lignebook.${name}`)

/** Keeps a preference until the next start. */
export const keep = (name: string, value: string): void => localStorage.setItem(`lignebook.${name}`, value)
