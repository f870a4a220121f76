let waiting = ''

/** The maker that the next new caliber begins with, taken once: a handbook goes on with the same. */
export const nextMaker = {
  leave: (maker: string): void => {
    waiting = maker
  },
  take: (): string => {
    const maker = waiting
    waiting = ''
    return maker
  },
}
