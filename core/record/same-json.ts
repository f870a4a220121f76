const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/**
 * True where two values are the same once written as JSON, whatever the order of their keys.
 *
 * @example
 * sameJson({ part: 'click', number: undefined }, { part: 'click' }) // true
 */
export const sameJson = (one: unknown, other: unknown): boolean => {
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((value, index) => sameJson(value, other[index]))
  if (isRecord(one) && isRecord(other)) {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)])
    return [...keys].every((key) => sameJson(one[key], other[key]))
  }
  return Object.is(one, other)
}
