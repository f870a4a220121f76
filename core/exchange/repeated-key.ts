/** A list or an object that is open: the keys seen in it, or how far it has been counted. */
interface Open {
  readonly keys: Set<string> | null
  key: string
  index: number
}

/** The quotation mark that ends the text which begins at `start`. */
const endOfText = (json: string, start: number): number => {
  for (let end = json.indexOf('"', start + 1); end >= 0; end = json.indexOf('"', end + 1)) {
    let escapes = 0
    while (json[end - 1 - escapes] === '\\') escapes += 1
    if (escapes % 2 === 0) return end
  }
  return json.length
}

/**
 * The path of the first key that stands twice in one object; null where none does. Of two such values JSON keeps the last
 * without a word, and a reading would be lost. The text must be sound JSON.
 * @example
 * repeatedKey('{"a":[{"b":1,"b":2}]}') // ['a', 0, 'b']
 */
export const repeatedKey = (json: string): readonly (string | number)[] | null => {
  const open: Open[] = []
  let top: Open | undefined
  let keyNext = false
  for (let at = 0; at < json.length; at += 1) {
    switch (json[at]) {
      case '{':
        top = { keys: new Set(), key: '', index: 0 }
        open.push(top)
        keyNext = true
        break
      case '[':
        top = { keys: null, key: '', index: 0 }
        open.push(top)
        keyNext = false
        break
      case '}':
      case ']':
        open.pop()
        top = open.at(-1)
        keyNext = false
        break
      case ',':
        if (top) top.index += 1
        keyNext = top?.keys != null
        break
      case '"': {
        const end = endOfText(json, at)
        if (keyNext && top?.keys) {
          const written = json.slice(at + 1, end)
          const key = written.includes('\\') ? (JSON.parse(`"${written}"`) as string) : written
          top.key = key
          if (top.keys.has(key)) return open.map((each) => (each.keys ? each.key : each.index))
          top.keys.add(key)
          keyNext = false
        }
        at = end
        break
      }
    }
  }
  return null
}
