import { UnusableInput } from './command.ts'

interface Named {
  readonly maker: string
  readonly designation: string
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase()

/**
 * The one caliber that a person means by a designation, or by maker and designation.
 * @throws UnusableInput where none is named so, or more than one
 */
export const namedCaliber = <T extends Named>(place: string, calibers: readonly T[], name: string): T => {
  const wanted = plain(name)
  const whole = calibers.filter(
    ({ maker, designation }) => plain(maker) !== '' && plain(`${maker} ${designation}`) === wanted,
  )
  const found = whole.length > 0 ? whole : calibers.filter(({ designation }) => plain(designation) === wanted)
  const [only, ...more] = found
  if (only === undefined)
    throw new UnusableInput(
      `${place} has no caliber ${name.trim() || 'without a name'}. Look at its designation again.`,
    )
  if (more.length === 0) return only
  if (whole.length > 0)
    throw new UnusableInput(`${place} has ${found.length} calibers ${name.trim()}. Give each a designation of its own.`)
  const makers = found.map(({ maker }) => maker.trim() || 'no maker')
  throw new UnusableInput(`${place} has ${name.trim()} of ${makers.join(' and of ')}. Name the maker too.`)
}
