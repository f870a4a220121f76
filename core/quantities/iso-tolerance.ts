const gradeSteps: readonly (readonly [upToMm: number, micrometres: Readonly<Record<number, number>>])[] = [
  [3, { 5: 4, 6: 6, 7: 10, 8: 14, 9: 25, 10: 40, 11: 60 }],
  [6, { 5: 5, 6: 8, 7: 12, 8: 18, 9: 30, 10: 48, 11: 75 }],
  [10, { 5: 6, 6: 9, 7: 15, 8: 22, 9: 36, 10: 58, 11: 90 }],
  [18, { 5: 8, 6: 11, 7: 18, 8: 27, 9: 43, 10: 70, 11: 110 }],
  [30, { 5: 9, 6: 13, 7: 21, 8: 33, 9: 52, 10: 84, 11: 130 }],
]

/**
 * Width of a standard tolerance grade (IT5 to IT11) in micrometres, or undefined outside the table.
 * @validity sizes over 0 up to and including 30 mm; each row holds over the row before, up to and including its own size
 * @source ISO 286 grade table, as two independent pages print it (grade B: the standard itself was not read)
 * @example
 * toleranceWidthUm(2, 6) // 6
 */
export const toleranceWidthUm = (sizeMm: number, grade: number): number | undefined =>
  sizeMm > 0 ? gradeSteps.find(([upToMm]) => sizeMm <= upToMm)?.[1][grade] : undefined
