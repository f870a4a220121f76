import { Link } from 'wouter'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'

/** A thin dash where a value is not stated; it opens the form at that field. */
export const MissingValue = ({ id, field, text = '–' }: { id: number; field: CaliberFieldKey; text?: string }) => (
  <Link
    href={`/caliber/${id}/edit/${field}`}
    className="missing"
    aria-label={`${caliberFields[field].label} is not stated. Enter it`}
  >
    {text}
  </Link>
)
