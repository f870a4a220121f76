import { naturalKey } from '../record/natural-key.ts'
import type { StockSpring } from './stock-spring.ts'

/**
 * Springs in the order of a drawer: tray by tray, those on none first, and on each by number as a person counts.
 * @example
 * trayOrder([{ supplierRef: '10a', heightMm: 1, thicknessMm: 0.1 }, { supplierRef: '2b', heightMm: 1, thicknessMm: 0.1 }]).map(({ supplierRef }) => supplierRef) // ['2b', '10a']
 */
export const trayOrder = <S extends StockSpring>(springs: readonly S[]): S[] => {
  const keyOfTray = new Map<string, string>()
  const keys = springs.map(({ tray = '', supplierRef }) => {
    const ofTray = keyOfTray.get(tray) ?? (tray === '' ? '' : naturalKey(tray))
    keyOfTray.set(tray, ofTray)
    return `${ofTray}\u0000${naturalKey(supplierRef)}`
  })
  const places = springs.map((_, at) => at)
  // Keys of springs that differ in tray or number differ.
  places.sort((one, other) => ((keys[one] ?? '') < (keys[other] ?? '') ? -1 : 1))
  return places.flatMap((at) => springs[at] ?? [])
}
