/**
 * True where one character left out, put in, changed, or exchanged with its neighbour turns one text into the other.
 * @example
 * isOneEdit('17220', '17202') // true
 * @example
 * isOneEdit('verrin', 'verrin') // false
 */
export const isOneEdit = (one: string, other: string): boolean => {
  if (one === other || Math.abs(one.length - other.length) > 1) return false
  const [short, long] = one.length <= other.length ? [one, other] : [other, one]
  let same = 0
  while (same < short.length && short[same] === long[same]) same += 1
  if (short.length < long.length) return short.slice(same) === long.slice(same + 1)
  if (short.slice(same + 1) === long.slice(same + 1)) return true
  const exchanged = short[same] === long[same + 1] && short[same + 1] === long[same]
  return exchanged && short.slice(same + 2) === long.slice(same + 2)
}
