import { expect, test } from 'vitest'
import { UnusableInput } from '../../../electron/terminal/command.ts'
import { springsOf } from '../../../electron/terminal/springs-of.ts'

const spring = { supplierRef: 'A 1', heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }
const text = (springs: unknown[]) => JSON.stringify({ lignebook: 1, springs })

test('reads sizes as numbers or as printed', () => {
  expect(springsOf('file.json', text([{ ...spring, heightMm: '15/10' }]), undefined)).toEqual([spring])
})

test('names the trays there are where one is asked for that is not there', () => {
  const read = () => springsOf('file.json', text([{ ...spring, tray: 'Drawer 3' }, spring]), 'attic')
  expect(read).toThrow(UnusableInput)
  expect(read).toThrow('file.json has no tray attic; it has Drawer 3, none named.')
  expect(() => springsOf('file.json', text([]), 'attic')).toThrow('it has no springs.')
})
