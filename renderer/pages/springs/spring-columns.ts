import type { CallOutput } from '../../../core/api/contract.ts'
import type { SpringSorting } from '../../../core/springs/find-springs.ts'
import { wordChoice } from '../../components/word-value.ts'

export type StoredSpring = CallOutput<'springs.all'>['springs'][number]

/** The columns of the tray, with the heading of each and its unit. */
export const springColumns: readonly {
  readonly key: SpringSorting
  readonly label: string
  readonly unit?: string
}[] = [
  { key: 'supplierRef', label: 'Number' },
  { key: 'tray', label: 'Tray' },
  { key: 'heightMm', label: 'Height', unit: 'mm' },
  { key: 'thicknessMm', label: 'Thickness', unit: 'mm' },
  { key: 'lengthMm', label: 'Length', unit: 'mm' },
  { key: 'barrelMm', label: 'Barrel', unit: 'mm' },
  { key: 'end', label: 'End' },
  { key: 'material', label: 'Material' },
  { key: 'inStock', label: 'In stock' },
  { key: 'price', label: 'Price' },
  { key: 'note', label: 'Note' },
]

const leastDecimals: Readonly<Partial<Record<SpringSorting, number>>> = { heightMm: 2, thicknessMm: 3, barrelMm: 2 }

/** What a spring has in a column, as it stands on the page; empty where it has nothing. */
export const springText = (spring: StoredSpring, key: SpringSorting): string => {
  const value = spring[key]
  if (value === undefined) return ''
  if (key === 'end') return wordChoice('springEnd', String(value))
  if (key === 'material') return wordChoice('springMaterial', String(value))
  if (typeof value === 'string') return value
  const least = leastDecimals[key] ?? 0
  const plain = String(Number(value.toFixed(4)))
  return (plain.split('.')[1] ?? '').length < least ? value.toFixed(least) : plain
}
