import { deflateSync } from 'node:zlib'

/** Small whole files of each kind, made up here. */

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1
  return rest
})
const crc = (bytes: Buffer): number =>
  (bytes.reduce((sum, byte) => (crcTable[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8), 0xffffffff) ^ 0xffffffff) >>> 0

const chunk = (name: string, content: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), content])
  const framed = Buffer.alloc(body.length + 8)
  framed.writeUInt32BE(content.length, 0)
  body.copy(framed, 4)
  framed.writeUInt32BE(crc(body), body.length + 4)
  return framed
}

/** A grey picture with its rows in the given shade, 0 black to 255 white. */
export const smallPng = (shade = 200, width = 60, height = 40): Buffer => {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  head.set([8, 0, 0, 0, 0], 8)
  const row = Buffer.concat([Buffer.from([0]), Buffer.alloc(width, shade)])
  const content = deflateSync(Buffer.concat(Array.from({ length: height }, () => row)))
  const signature = Buffer.from('\u0089PNG\r\n\u001a\n', 'latin1')
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', content), chunk('IEND', Buffer.alloc(0))])
}

/** The frame of a JPEG by its marks; there is nothing in it to be seen. */
export const smallJpeg = (width = 60, height = 40): Buffer => {
  const frame = Buffer.from([0xff, 0xc0, 0, 11, 8, 0, 0, 0, 0, 1, 1, 0x11, 0])
  frame.writeUInt16BE(height, 5)
  frame.writeUInt16BE(width, 7)
  const comment = Buffer.from([0xff, 0xfe, 0, 4, 0x68, 0x69])
  return Buffer.concat([Buffer.from([0xff, 0xd8]), comment, frame, Buffer.from([0xff, 0xda, 0, 2, 0xff, 0xd9])])
}

/** A PDF of these objects, the first of them its catalogue. */
const pdfOf = (parts: readonly string[]): Buffer => {
  let file = '%PDF-1.4\n'
  const places = parts.map((part, index) => {
    const place = file.length
    file += `${index + 1} 0 obj${part}endobj\n`
    return place
  })
  const table = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('')
  const count = parts.length + 1
  const trailer = `trailer<</Size ${count}/Root 1 0 R>>\nstartxref\n${file.length}\n%%EOF\n`
  file += `xref\n0 ${count}\n0000000000 65535 f \n${table}${trailer}`
  return Buffer.from(file, 'latin1')
}
const streamOf = (head: string, content: string) => `<<${head}/Length ${content.length}>>stream\n${content}\nendstream`

/** A PDF of pages with a line of print on each. */
export const smallPdf = (...texts: readonly string[]): Buffer => {
  const kids = texts.map((_, page) => `${4 + page * 2} 0 R`).join(' ')
  const resources = '/MediaBox[0 0 300 200]/Resources<</Font<</F1 3 0 R>>>>'
  return pdfOf([
    '<</Type/Catalog/Pages 2 0 R>>',
    `<</Type/Pages/Kids[${kids}]/Count ${texts.length}>>`,
    '<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>',
    ...texts.flatMap((text, page) => [
      `<</Type/Page/Parent 2 0 R${resources}/Contents ${5 + page * 2} 0 R>>`,
      streamOf('', `BT /F1 24 Tf 20 100 Td (${text}) Tj ET`),
    ]),
  ])
}

/** A PDF with a black square scanned as a fax: 64 rows of 64, each like the white one before, and then reversed. */
export const smallFaxPdf = (): Buffer => {
  const fax = '/Filter/CCITTFaxDecode/DecodeParms<</K -1/Columns 64/Rows 64/EndOfBlock false>>'
  return pdfOf([
    '<</Type/Catalog/Pages 2 0 R>>',
    '<</Type/Pages/Kids[3 0 R]/Count 1>>',
    '<</Type/Page/Parent 2 0 R/MediaBox[0 0 300 200]/Resources<</XObject<</I 5 0 R>>>>/Contents 4 0 R>>',
    streamOf('', 'q 100 0 0 100 50 50 cm /I Do Q'),
    streamOf(
      `/Type/XObject/Subtype/Image/Width 64/Height 64/BitsPerComponent 1/ColorSpace/DeviceGray/Decode[1 0]${fax}`,
      '\u00ff'.repeat(8),
    ),
  ])
}

export const smallSvg = Buffer.from('<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>')
