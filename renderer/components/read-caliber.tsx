import type { ReactNode } from 'react'
import { Link } from 'wouter'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { useCaliber } from '../api/hooks.ts'
import { failureText } from './failure-text.ts'

interface ReadCaliberProps {
  readonly id: number
  readonly children: (entry: CaliberEntry) => ReactNode
  /** The way out where the caliber cannot be read. */
  readonly otherwise?: ReactNode
}

/** A caliber of the library on the page: while it is read, where it cannot be, and then as it is. */
export const ReadCaliber = ({ id, children, otherwise = <Link href="/">Back to the list</Link> }: ReadCaliberProps) => {
  const { data, error } = useCaliber(id)
  if (error)
    return (
      <p className="notice" role="alert">
        {failureText(error)} {otherwise}
      </p>
    )
  return data ? children(data.entry) : <p className="notice quiet">Reading…</p>
}
