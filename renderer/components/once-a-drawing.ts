/**
 * Measures the page once for all lines of one drawing: a list of fifty thousand asks for each of them, and every question
 * to the browser costs it a look at its styles. What it answered is forgotten as soon as the drawing is done.
 */
export const onceADrawing = <T>(measure: () => T): (() => T) => {
  let known: { readonly value: T } | null = null
  return () => {
    if (known === null) {
      known = { value: measure() }
      queueMicrotask(() => {
        known = null
      })
    }
    return known.value
  }
}

/** The size of the page's text in px. */
export const rootPx = onceADrawing(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize))
