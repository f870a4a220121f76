/** A short key for a source, made of its author or title and its year, that none on the shelf has yet: `marlow-1931`. */
export const sourceKey = (
  { title, author, year }: { readonly title: string; readonly author: string; readonly year: string },
  taken: readonly string[],
): string => {
  const words = (author.trim() || title)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .map((word) => word.replace(/[^a-z0-9]/g, ''))
    .filter((word) => word !== '')
  const name = (author.trim() === '' ? words.slice(0, 2).join('-') : words.at(-1)) || 'source'
  const plain = /^\d{4}$/.test(year.trim()) ? `${name}-${year.trim()}` : name
  if (!taken.includes(plain)) return plain
  const numbered = taken.map((_, at) => `${plain}-${at + 2}`)
  return numbered.find((key) => !taken.includes(key)) ?? `${plain}-${taken.length + 2}`
}
