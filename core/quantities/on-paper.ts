/**
 * A figure as it is carried on paper: a size to the fourth decimal, a tenth of a micrometre, unless fewer are asked for.
 * @example
 * onPaper(2 * 2.25582906) // 4.5117
 */
export const onPaper = (value: number, places = 4): number => Number(value.toFixed(places))
