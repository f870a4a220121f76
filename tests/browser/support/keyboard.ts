import type { Page } from 'playwright-core'

export interface Keyboard {
  readonly press: (key: string) => Promise<void>
  readonly type: (text: string) => Promise<void>
  /** The cell of the form in which one stands. */
  readonly cell: () => Promise<string>
  /** Enter until the cell is reached. */
  readonly goOnTo: (cell: string) => Promise<void>
  /** How many keys were pressed. */
  readonly count: () => number
  /** The first event of a mouse or a finger since, or null. */
  readonly mouse: () => Promise<string | null>
}

/** No mouse: what is pressed is counted, and a mouse that was used after all is told. */
export const keyboardOf = async (page: Page): Promise<Keyboard> => {
  await page.evaluate(() => {
    for (const kind of ['mousedown', 'pointerdown', 'touchstart'])
      addEventListener(kind, () => document.documentElement.setAttribute('data-mouse', kind), true)
  })
  let presses = 0
  const press = async (key: string) => {
    presses += 1
    await page.keyboard.press(key)
  }
  const type = async (text: string) => {
    presses += text.length
    await page.keyboard.type(text)
  }
  const cell = () => page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.cell ?? '')
  const goOnTo = async (wanted: string) => {
    for (let steps = 0; (await cell()) !== wanted; steps += 1) {
      if (steps > 60) throw new Error(`Enter never came to ${wanted}; it stands at ${await cell()}`)
      await press('Enter')
    }
  }
  const mouse = () => page.evaluate(() => document.documentElement.getAttribute('data-mouse'))
  return { press, type, cell, goOnTo, count: () => presses, mouse }
}

/** Tab until an element of the page has the focus. */
export const tabTo = async (page: Page, selector: string): Promise<void> => {
  for (let steps = 0; steps < 80; steps += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Tab never came to ${selector}`)
}
