import { type KeyboardEvent, useRef } from 'react'
import { type Choices, choiceBegunBy, readChoice } from '../../core/record/read-choice.ts'

/** Letters that follow each other sooner than this are one word. */
const wordMs = 1200

/**
 * What is typed in a list of choices, as the handbook prints it in any of the four languages: the browser by itself knows
 * only the labels, and would take `Loch` for `loop`. A word typed whole is handed on as printed, its beginning as the choice
 * that it begins; letters that begin none leave what stood there before.
 */
export const useTypedChoice = (def: Choices, value: string, onType: (text: string) => void) => {
  const word = useRef({ text: '', at: 0, before: '' })
  return (event: KeyboardEvent<HTMLSelectElement>): void => {
    const { key } = event
    if (key.length !== 1 || event.ctrlKey || event.metaKey || event.altKey || event.nativeEvent.isComposing) return
    const now = performance.now()
    const goesOn = now - word.current.at < wordMs && word.current.text !== ''
    // A space alone opens the list.
    if (key === ' ' && !goesOn) return
    const text = goesOn ? word.current.text + key : key
    const before = goesOn ? word.current.before : value
    word.current = { text, at: now, before }
    event.preventDefault()
    event.stopPropagation()
    if (key === ' ') return
    const whole = readChoice(def, text)
    if (!whole.ok) onType(choiceBegunBy(def, text) ?? before)
    else onType(Object.values(def.choices).includes(text) ? whole.value : text)
  }
}
