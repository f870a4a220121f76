/**
 * A number as a sentence shows it: rounded, without trailing noughts, thousands set apart by a narrow no-break space, a true minus.
 * @example
 * figure(0.47746, 2) // '0.48'
 */
export const figure = (value: number, decimals = 2): string => {
  const scale = 10 ** decimals
  const rounded = Math.round(Math.abs(value) * scale) / scale
  const [whole = '', fraction] = String(rounded).split('.')
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole
  return `${value < 0 && rounded !== 0 ? '−' : ''}${grouped}${fraction === undefined ? '' : `.${fraction}`}`
}
