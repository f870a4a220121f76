const vulgarGlyphs: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** No printed value of a watch is longer; what is longer is not read. */
export const longestPrint = 80

/**
 * Brings the many glyphs of print to one: plain spaces, plain hyphens, `'` and `"` for every kind of prime or
 * quotation mark, `'''` for the ligne however it was set, vulgar fractions spelt out (`8¾` to `8 3/4`).
 * @example
 * tidyPrint('8¾‴') // "8 3/4'''"
 */
export const tidyPrint = (text: string): string =>
  text
    .replace(/[¼½¾⅓⅔⅙⅚⅛⅜⅝⅞]/g, (glyph, at: number, whole: string) =>
      at > 0 && /\d/.test(whole.charAt(at - 1)) ? ` ${vulgarGlyphs[glyph] ?? glyph}` : (vulgarGlyphs[glyph] ?? glyph),
    )
    .replace(/\s+/g, ' ')
    .replace(/[⁄∕]/g, '/')
    .replace(/[−–—‐‑‒]/g, '-')
    .replace(/‴/g, "'''")
    .replace(/[’‘‛′´`ʼ]/g, "'")
    .replace(/[“”„‟″]/g, '"')
    .replace(/"'|'"/g, "'''")
    .replace(/(?<!')''(?!')/g, '"')
    .replace(/μ/g, 'µ')
    .trim()
