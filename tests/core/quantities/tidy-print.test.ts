import { expect, test } from 'vitest'
import { tidyPrint } from '../../../core/quantities/tidy-print.ts'

test('every way to set a ligne sign comes to three strokes', () => {
  for (const mark of ["'''", '‴', '’’’', '′′′', '″′', '”’', "''’"]) expect(tidyPrint(`17${mark}`)).toBe("17'''")
})

test('two strokes are the inch sign, fractions are spelt out and spaces are plain', () => {
  expect(tidyPrint("1''")).toBe('1"')
  expect(tidyPrint(' 8¾\u202f‴ ')).toBe("8 3/4 '''")
  expect(tidyPrint('½')).toBe('1/2')
})
