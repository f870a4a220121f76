import type { GaugeTable } from '../../core/springs/gauge-table.ts'

/** A gauge table with these sizes by number. */
export const gaugeTableOf = (
  name: string,
  rows: Readonly<Record<string, number>> | readonly (readonly [string, number])[],
  more: Partial<Omit<GaugeTable, 'name' | 'rows'>> = {},
): GaugeTable => ({
  name,
  measures: 'thickness',
  ...more,
  rows: (Array.isArray(rows) ? rows : Object.entries(rows)).map(([number, mm]) => ({ number, mm })),
})
