import { foldHeading } from '../../core/record/fold-heading.ts'
import { isOneEdit } from '../../core/record/one-edit.ts'
import { listed } from '../../core/wording/listed.ts'
import { UnusableInput } from './command.ts'

interface Named {
  readonly maker: string
  readonly designation: string
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase()
const whole = ({ maker, designation }: Named): string => `${maker} ${designation}`.trim()

const mostNear = 3

/** What a person may have meant: the same letters and figures, one character off, or the beginning of the name. */
const nearOnes = (calibers: readonly Named[], name: string): readonly string[] => {
  const wanted = foldHeading(name)
  if (wanted === '') return []
  const isNear = (text: string) => {
    const own = foldHeading(text)
    return own === wanted || own.startsWith(wanted) || isOneEdit(own, wanted)
  }
  const near = calibers.filter((caliber) => isNear(caliber.designation) || isNear(whole(caliber)))
  return [...new Set(near.map(whole))].slice(0, mostNear)
}

/**
 * The one caliber that a person means by a designation, or by maker and designation.
 * @throws UnusableInput where none is named so, or more than one
 */
export const namedCaliber = <T extends Named>(place: string, calibers: readonly T[], name: string): T => {
  const wanted = plain(name)
  const byBoth = calibers.filter((caliber) => plain(caliber.maker) !== '' && plain(whole(caliber)) === wanted)
  const found = byBoth.length > 0 ? byBoth : calibers.filter(({ designation }) => plain(designation) === wanted)
  const [only, ...more] = found
  if (only === undefined) {
    const near = nearOnes(calibers, name)
    const advice = near.length > 0 ? `it has ${listed(near)}` : 'look at its designation again'
    throw new UnusableInput(`${place} has no caliber ${name.trim() || 'without a name'}; ${advice}.`)
  }
  if (more.length === 0) return only
  const makers = [...new Set(found.map(({ maker }) => maker.trim() || 'no maker'))]
  if (makers.length === 1)
    throw new UnusableInput(`${place} has ${found.length} calibers ${name.trim()}; give each a designation of its own.`)
  throw new UnusableInput(`${place} has ${name.trim()} of ${makers.join(' and of ')}; name the maker too.`)
}
