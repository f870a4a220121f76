import { useQuery } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import { foldHeading } from '../../../core/record/fold-heading.ts'
import { call } from '../../api/hooks.ts'

interface LikeNamedProps {
  readonly maker: string
  readonly designation: string
  readonly caliberId: number | null
}

/** Says, while a name is typed, that the library already has it; never in the way. */
export const LikeNamed = ({ maker, designation, caliberId }: LikeNamedProps) => {
  const name = `${maker.trim()} ${designation.trim()}`
  const [asked, setAsked] = useState('')
  useEffect(() => {
    const ready = maker.trim() !== '' && designation.trim() !== ''
    const timer = setTimeout(() => setAsked(ready ? name.slice(0, 200) : ''), 250)
    return () => clearTimeout(timer)
  }, [maker, designation, name])
  const { data } = useQuery({
    queryKey: ['calibers.search', 'named', asked],
    queryFn: () => call('calibers.search', { words: asked, limit: 5 }),
    enabled: asked !== '',
  })
  const same = data?.hits.find(
    (hit) =>
      asked === name &&
      hit.id !== caliberId &&
      foldHeading(hit.maker) === foldHeading(maker) &&
      foldHeading(hit.designation) === foldHeading(designation),
  )
  return (
    <p className="entry-same" aria-live="polite">
      {same ? (
        <>
          {same.maker} {same.designation} is already in the library.{' '}
          <Link href={`/caliber/${same.id}`}>Look at it</Link> or{' '}
          <Link href={`/caliber/${same.id}/edit`}>change it</Link>; what is typed here is kept as a draft.
        </>
      ) : null}
    </p>
  )
}
