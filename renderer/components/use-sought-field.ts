import { useEffect } from 'react'

/** The place of a field or list on a caliber's page. */
export const fieldPlace = (key: string): string => `field-${key}`

/** Brings the field that one came for into sight and gives it the focus; the page itself where none is sought, or it has no place. */
export const useSoughtField = (key: string | undefined): void => {
  useEffect(() => {
    const place = key === undefined ? null : document.getElementById(fieldPlace(key))
    if (place === null) {
      document.getElementById('main')?.focus({ preventScroll: true })
      return
    }
    place.scrollIntoView({ block: 'center' })
    place.focus({ preventScroll: true })
  }, [key])
}
