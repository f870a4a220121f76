import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { soundAttachment } from '../../../electron/service/sound-attachment.ts'
import { smallPng, smallSvg } from '../../support/small-files.ts'

test('bytes of a picture come with their type and their SHA-256', () => {
  const bytes = smallPng()
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  expect(soundAttachment('plate.png', bytes.toString('base64'))).toEqual({
    ok: true,
    attachment: { sha256, type: 'image/png', name: 'plate.png', bytes, extra: '{}' },
  })
})

test('what is no base64, too long or no picture is refused', () => {
  for (const data of ['!', 'AAA', 'AA A', 'A===', 'AAAA\n'])
    expect(soundAttachment('a', data)).toEqual({ ok: false, fault: 'not-base64' })
  expect(soundAttachment('a', 'A'.repeat(33_333_340))).toEqual({ ok: false, fault: 'too-large' })
  expect(soundAttachment('a.png', smallSvg.toString('base64'))).toEqual({ ok: false, fault: 'svg' })
})
