/**
 * A number without the noise that binary sums leave behind its ninth decimal, so that an edge that was typed is met exactly.
 * @example
 * plain(1.6 - 1.5) // 0.1
 */
export const plain = (value: number): number => Math.round(value * 1e9) / 1e9
