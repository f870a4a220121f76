import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { attachmentKind, attachmentLimits } from '../../../core/record/attachment-kind.ts'
import { smallJpeg, smallPdf, smallPng, smallSvg } from '../../support/small-files.ts'

const whole = { PNG: smallPng(), JPEG: smallJpeg(), PDF: smallPdf('Aldervane 17-430') }
const bytes = (text: string) => Buffer.from(text, 'latin1')

test('whole files are known by their content', () => {
  expect(attachmentKind(whole.PNG)).toEqual({ ok: true, type: 'image/png' })
  expect(attachmentKind(whole.JPEG)).toEqual({ ok: true, type: 'image/jpeg' })
  expect(attachmentKind(whole.PDF)).toEqual({ ok: true, type: 'application/pdf' })
})

test('what a camera writes after the end of a JPEG does not spoil it', () => {
  const more = Buffer.concat([whole.JPEG, bytes('more \u00d9 of its own')])
  expect(attachmentKind(more)).toEqual({ ok: true, type: 'image/jpeg' })
})

describe('a file cut short is refused wherever it stops', () => {
  test.each(Object.entries(whole))('%s', (_, file) => {
    for (let length = 1; length < file.length - 8; length += 1) {
      expect(attachmentKind(file.subarray(0, length)).ok, `${length} of ${file.length} bytes`).toBe(false)
    }
  })
  test('a PNG of eight bytes, or with half a header, is said to stop before its end', () => {
    for (const length of [4, 8, 20, 32])
      expect(attachmentKind(whole.PNG.subarray(0, length))).toEqual({ ok: false, fault: 'cut-short' })
  })
})

test.each([
  ['svg', smallSvg],
  ['svg', bytes('\u00ef\u00bb\u00bf  <!-- plate --><SVG onload="x()">')],
  ['svg', Buffer.from('\ufeff<svg xmlns="x">', 'utf16le')],
  ['html', bytes('\n<!DOCTYPE html><title>plate</title>')],
  ['html', bytes('<script>alert(1)</script>')],
  ['other-kind', bytes('<?xml version="1.0"?><drawing/>')],
  ['other-kind', bytes('only words')],
  ['program', bytes('MZ\u0090\u0000')],
  ['program', bytes('\u007fELF')],
  ['program', bytes('#!/bin/sh')],
  ['archive', bytes('PK\u0003\u0004')],
  ['archive', bytes('\u001f\u008b\u0008')],
  ['other-picture', bytes('GIF89a')],
  ['other-picture', bytes('RIFF\u0001\u0000\u0000\u0000WEBPVP8 ')],
  ['other-picture', bytes('\u0000\u0000\u0000\u0018ftypheic')],
  ['other-picture', bytes('II*\u0000')],
  ['empty', Buffer.alloc(0)],
  ['damaged', smallPng(0, 0, 40)],
  ['damaged', smallJpeg(60, 0)],
  ['too-many-pixels', smallJpeg(20_000, 20_000)],
  ['too-large', Buffer.alloc(attachmentLimits.bytes + 1)],
] as const)('refused as %s', (fault, file) => {
  expect(attachmentKind(file)).toEqual({ ok: false, fault })
})

test('a web page with a PNG after it is no PNG, and neither is a PDF with a page before it', () => {
  expect(attachmentKind(Buffer.concat([bytes('<html>'), whole.PNG]))).toEqual({ ok: false, fault: 'html' })
  expect(attachmentKind(Buffer.concat([bytes('<html>'), whole.PDF]))).toEqual({ ok: false, fault: 'html' })
})

test('any bytes at all are judged, and never held to be what their beginning denies', () => {
  fc.assert(
    fc.property(
      fc.uint8Array({ maxLength: 200 }),
      fc.constantFrom('', '\u0089PNG\r\n\u001a\n', '\u00ff\u00d8\u00ff'),
      (tail, head) => {
        expect(typeof attachmentKind(Buffer.concat([bytes(head), tail])).ok).toBe('boolean')
      },
    ),
  )
})
