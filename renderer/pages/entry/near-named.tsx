import { useQuery } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readNames } from '../../../core/record/read-field.ts'
import { wordNearName } from '../../../core/wording/near-name.ts'
import { call } from '../../api/hooks.ts'
import { chosenReading } from './chosen-reading.ts'

/** How long typing must rest before the library is asked. */
const restMs = 250

interface NearNamedProps {
  readonly entry: CaliberEntry
  readonly caliberId: number | null
}

/** Says, while a name is typed, which calibers of the library may be the same, spelt otherwise; never in the way. */
export const NearNamed = ({ entry, caliberId }: NearNamedProps) => {
  const others = chosenReading(entry.fields.alsoKnownAs)?.printed ?? ''
  const typed = JSON.stringify([entry.maker.trim().slice(0, 200), entry.designation.trim().slice(0, 200), others])
  const [asked, setAsked] = useState('')
  useEffect(() => {
    const timer = setTimeout(() => setAsked(typed), restMs)
    return () => clearTimeout(timer)
  }, [typed])
  const [maker = '', designation = '', names = ''] = asked === '' ? [] : (JSON.parse(asked) as string[])
  const { data } = useQuery({
    queryKey: ['calibers.near', caliberId, asked],
    queryFn: () => {
      const alsoKnownAs = readNames(names)
        .slice(0, 50)
        .map((name) => name.slice(0, 200))
      return call('calibers.near', { maker, designation, alsoKnownAs, except: caliberId })
    },
    enabled: maker !== '' && designation !== '',
  })
  const near = asked === typed && maker !== '' && designation !== '' ? (data?.near ?? []) : []
  return (
    <div className="entry-same" aria-live="polite">
      {near.length > 0 ? (
        <>
          <ul>
            {near.map((one) => (
              <li key={one.id}>
                {one.maker} {one.designation} {wordNearName(one.why)}.{' '}
                <Link href={`/caliber/${one.id}`}>Look at it</Link> or{' '}
                <Link href={`/caliber/${one.id}/edit`}>change it</Link>
              </li>
            ))}
          </ul>
          <p className="quiet">What is typed here is kept as a draft.</p>
        </>
      ) : null}
    </div>
  )
}
