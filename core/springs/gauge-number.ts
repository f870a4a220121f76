import { tidyPrint } from '../quantities/tidy-print.ts'

const naught = /^(\d{1,2}) ?\/ ?0$/
const broken = /^(?:(\d{1,3}) )?(\d) ?\/ ?([2-8])$/
const decimal = /^(\d{1,3})(?:[.,](\d{1,2}))?([a-w]?)$/

/**
 * A number of a gauge brought to one form, so that two prints of it can be compared; null where it is none.
 * Nothing is made of it but that: `00` and `2/0` stay two numbers, since not every gauge means the same by both.
 * @example
 * gaugeNumber('5½') // '5 1/2'
 * @example
 * gaugeNumber('No. 2 / 0') // '2/0'
 * @example
 * gaugeNumber('12/100') // null
 */
export const gaugeNumber = (text: string): string | null => {
  const tidy = tidyPrint(text)
    .toLowerCase()
    .replace(/^(?:no|nr|n)[.°º]? ?(?=\d)/, '')
  const [, noughts] = naught.exec(tidy) ?? []
  if (noughts !== undefined) return `${noughts}/0`
  const [, whole, above, below] = broken.exec(tidy) ?? []
  if (above !== undefined) return `${whole === undefined ? '' : `${whole} `}${above}/${below}`
  const [, units, parts, letter] = decimal.exec(tidy) ?? []
  return units === undefined ? null : `${units}${parts === undefined ? '' : `.${parts}`}${letter}`
}
