import { useEffect, useState } from 'react'
import { keep, kept } from './kept.ts'

export const themes = { system: 'As the system', day: 'Day page', night: 'Night bench' } as const
export type Theme = keyof typeof themes

/** Text sizes as shares of the usual one. */
const sizes = [0.8, 0.9, 1, 1.1, 1.25, 1.5, 1.75, 2]
const usualPx = 15

const isTheme = (text: string | null): text is Theme => text !== null && Object.hasOwn(themes, text)

/** The chosen theme and text size, kept between starts and set on the document. */
export const useLook = () => {
  const [theme, setTheme] = useState<Theme>(() => {
    const before = kept('theme')
    return isTheme(before) ? before : 'system'
  })
  const [size, setSize] = useState(() => {
    const before = Number(kept('text-size'))
    return sizes.includes(before) ? before : 1
  })

  useEffect(() => {
    const dark = matchMedia('(prefers-color-scheme: dark)')
    const apply = () => {
      const shown = theme === 'system' ? (dark.matches ? 'night' : 'day') : theme
      document.documentElement.dataset.theme = shown
    }
    apply()
    keep('theme', theme)
    dark.addEventListener('change', apply)
    return () => dark.removeEventListener('change', apply)
  }, [theme])

  useEffect(() => {
    // A share of the browser's own size, so that a reader's own setting still counts; 16 px is every browser's usual.
    document.documentElement.style.setProperty('font-size', `${((usualPx * size) / 16) * 100}%`)
    keep('text-size', String(size))
  }, [size])

  const step = (by: -1 | 0 | 1) => setSize((now) => (by === 0 ? 1 : (sizes[sizes.indexOf(now) + by] ?? now)))
  const nextTheme = () => setTheme((now) => (now === 'system' ? 'day' : now === 'day' ? 'night' : 'system'))
  return { theme, nextTheme, size, step }
}
