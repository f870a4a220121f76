import { type ListWord, type WordMeanings, wordFields } from '../../../core/exchange/list-words.ts'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { readChoice } from '../../../core/record/read-choice.ts'
import { figure } from '../../../core/wording/figure.ts'
import { useTypedChoice } from '../../components/use-typed-choice.ts'

/** More words than this are hardly words of an end or a material. */
const shownWords = 40

interface WordMeaningsProps {
  readonly words: readonly ListWord[]
  readonly meanings: WordMeanings
  readonly set: (meanings: WordMeanings) => void
}

interface WordLineProps {
  readonly word: ListWord
  readonly mean: (meaning: string) => void
}

const WordLine = ({ word: { kind, printed, meaning, rows, firstRow }, mean }: WordLineProps) => {
  const def = caliberFields[wordFields[kind]]
  const typeChoice = useTypedChoice(def, meaning ?? '', (text) => {
    const read = readChoice(def, text)
    if (read.ok) mean(read.value)
  })
  return (
    <li data-unknown={meaning === null || undefined}>
      <label>
        <span>
          {meaning === null && <span aria-hidden="true">✕ </span>}
          <b>{printed}</b>
          <span className="quiet">
            {def.label.toLowerCase()}, {rows === 1 ? `row ${firstRow}` : `${figure(rows)} rows from ${firstRow}`}
          </span>
        </span>
        <select value={meaning ?? '?'} onChange={({ target }) => mean(target.value)} onKeyDown={typeChoice}>
          {meaning === null && <option value="?">not known, refused</option>}
          <option value="">says nothing</option>
          {Object.entries(def.choices).map(([choice, text]) => (
            <option key={choice} value={choice}>
              {text}
            </option>
          ))}
        </select>
      </label>
    </li>
  )
}

/** Those that Lignebook does not know come first, and stay there when they are given a meaning. */
const isKnown = ({ kind, printed }: ListWord): boolean => readChoice(caliberFields[wordFields[kind]], printed).ok

/** The words of a list with what each is read as; the reader of the list may say otherwise, and what an unknown one means. */
export const WordMeaningsTable = ({ words, meanings, set }: WordMeaningsProps) => (
  <section className="word-meanings" aria-label="Words of the list">
    <h2>Words of the list</h2>
    <ul>
      {words
        .toSorted((one, other) => Number(isKnown(one)) - Number(isKnown(other)))
        .slice(0, shownWords)
        .map((word) => (
          <WordLine
            key={`${word.kind} ${word.key}`}
            word={word}
            mean={(meaning) => set({ ...meanings, [word.kind]: { ...meanings[word.kind], [word.key]: meaning } })}
          />
        ))}
    </ul>
    {words.length > shownWords && (
      <p>
        {figure(words.length - shownWords)} more words stand there; look again at what is in the columns of end and
        material.
      </p>
    )}
  </section>
)
