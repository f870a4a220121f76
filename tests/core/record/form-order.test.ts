import { expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { fieldGroups } from '../../../core/fields/field.ts'
import { formOrder } from '../../../core/record/form-order.ts'

test('the form asks for every field once', () => {
  const asked = formOrder().flatMap((part) => part.keys)
  expect(asked.toSorted()).toEqual(Object.keys(caliberFields).toSorted())
})

test('the groups stand in their order, each with a label and at least one field', () => {
  expect(formOrder().map((part) => part.group)).toEqual(Object.keys(fieldGroups))
  for (const part of formOrder()) {
    expect(part.label).toBe(fieldGroups[part.group])
    expect(part.keys.length).toBeGreaterThan(0)
  }
})

test('the train is asked for from the barrel on', () => {
  const train = formOrder().find((part) => part.group === 'train')?.keys ?? []
  expect(train.slice(0, 3)).toEqual(['barrelTeeth', 'intermediatePinion', 'intermediateWheel'])
  expect(train.indexOf('fourthWheel')).toBeLessThan(train.indexOf('escapePinion'))
})
