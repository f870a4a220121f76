const word =
  /[ \t\r\n]*(?:([{}[\]:,])|("(?:[^"\\\p{Cc}]+|[\u007f-\u009f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.]))/uy

type Expected = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'comma-or-end' | 'nothing'

/**
 * Where a text stops being JSON: the offset of the first character that cannot stand there.
 * Engines name the place for some faults only, hence our own.
 */
export const jsonFaultOffset = (text: string): number => {
  const open: ('{' | '[')[] = []
  let expected: Expected = 'value'
  let at = 0
  const afterValue = (): Expected => (open.length === 0 ? 'nothing' : 'comma-or-end')
  for (;;) {
    const start = at + (/^[ \t\r\n]*/.exec(text.slice(at, at + 10_000))?.[0].length ?? 0)
    word.lastIndex = at
    const found = word.exec(text)
    if (!found) return start
    const mark = found[1]
    const isText = found[2] !== undefined
    if (mark === '{' || mark === '[') {
      if (expected !== 'value' && expected !== 'value-or-end') return start
      open.push(mark)
      expected = mark === '{' ? 'key-or-end' : 'value-or-end'
    } else if (mark === '}' || mark === ']') {
      const ends = mark === '}' ? 'key-or-end' : 'value-or-end'
      if (open.at(-1) !== (mark === '}' ? '{' : '[') || (expected !== ends && expected !== 'comma-or-end')) return start
      open.pop()
      expected = afterValue()
    } else if (mark === ':') {
      if (expected !== 'colon') return start
      expected = 'value'
    } else if (mark === ',') {
      if (expected !== 'comma-or-end') return start
      expected = open.at(-1) === '{' ? 'key' : 'value'
    } else if (isText && (expected === 'key' || expected === 'key-or-end')) {
      expected = 'colon'
    } else if (expected === 'value' || expected === 'value-or-end') {
      expected = afterValue()
    } else return start
    at = word.lastIndex
  }
}
