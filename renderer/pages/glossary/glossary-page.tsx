import { type KeyboardEvent, memo, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { languages } from '../../../core/fields/field.ts'
import { type ProofTerm, proofTerms } from '../../../core/proofs/proof-terms.ts'
import { findTerms } from '../../../core/record/find-terms.ts'
import { type GlossaryTerm, glossary } from '../../../core/record/glossary.ts'
import { useCommands } from '../../components/commands.ts'
import { languageNames } from '../../components/language-names.ts'
import { useTitle } from '../../components/use-title.ts'
import { glossaryPlace } from './glossary-place.ts'
import './glossary-page.css'

const terms = glossary()
const proofs = proofTerms()
const kindWords = { field: 'field of a caliber', list: 'list of a caliber', part: '' } as const

const printedIn = (found: GlossaryTerm['found']): string =>
  languages
    .flatMap((language) => {
      const where = found[language]
      return where === undefined ? [] : [`${languageNames[language]} in ${where.join(' and ')}`]
    })
    .join('; ')

const Term = memo(({ term, chosen }: { term: GlossaryTerm; chosen: boolean }) => {
  const { key, kind, label, meaning, names, traps, choices, found } = term
  const printed = printedIn(found)
  return (
    <li id={`term-${key}`} className="term" tabIndex={-1} aria-labelledby={`term-${key}-label`} data-chosen={chosen}>
      <div className="term-head">
        <h2 id={`term-${key}-label`}>{label}</h2>
        {kindWords[kind] && <span className="quiet term-kind">{kindWords[kind]}</span>}
        <p>{meaning}</p>
      </div>
      <dl className="term-names">
        {languages.map((language) => (
          <div key={language}>
            <dt>{languageNames[language]}</dt>
            <dd lang={language}>{names[language].join(', ')}</dd>
          </div>
        ))}
      </dl>
      {choices.length > 0 && (
        <dl className="term-choices">
          {choices.map((choice) => (
            <div key={choice.label}>
              <dt>{choice.label}</dt>
              <dd>
                {languages.map((language) => (
                  <span key={language} lang={language}>
                    {choice.names[language].join(', ')}
                  </span>
                ))}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {traps.map((trap) => (
        <p key={trap} className="term-trap">
          <span aria-hidden="true">△ </span>
          {trap}
        </p>
      ))}
      {printed && <p className="quiet term-found">Found in print: {printed}.</p>}
    </li>
  )
})

const Proof = memo(({ term }: { term: ProofTerm }) => {
  const { key, label, meaning, allows, why, source, validity } = term
  return (
    <li id={`term-${key}`} className="term" tabIndex={-1} aria-labelledby={`term-${key}-label`}>
      <div className="term-head">
        <h3 id={`term-${key}-label`}>{label}</h3>
        <p>{meaning}</p>
      </div>
      <dl className="term-grounds">
        <div>
          <dt>Allows</dt>
          <dd>{allows}</dd>
        </div>
        <div>
          <dt>Because</dt>
          <dd>{why}</dd>
        </div>
        <div>
          <dt>Holds for</dt>
          <dd>{validity}</dd>
        </div>
        <div>
          <dt>Source</dt>
          <dd>{source}</dd>
        </div>
      </dl>
    </li>
  )
})

/** Every field, list and part in four languages and every proof, found as one types, with what misleads in the names. */
export const GlossaryPage = ({ termKey }: { termKey?: string | undefined }) => {
  const [, go] = useLocation()
  const [typed, setTyped] = useState('')
  const [from] = useState(glossaryPlace.from)
  const input = useRef<HTMLInputElement>(null)
  const page = useRef<HTMLElement>(null)
  const wanted = useDeferredValue(typed)
  const found = useMemo(() => findTerms(terms, wanted), [wanted])
  const foundProofs = useMemo(() => findTerms(proofs, wanted), [wanted])

  useTitle('Glossary')
  useEffect(() => {
    const term = termKey === undefined ? null : document.getElementById(`term-${termKey}`)
    if (term === null) input.current?.focus()
    else {
      term.scrollIntoView({ block: 'center' })
      term.focus({ preventScroll: true })
    }
  }, [termKey])

  const leave = () => {
    glossaryPlace.from = ''
    go(from === '' ? '/' : from)
  }
  useCommands([
    { label: from === '' ? 'Back to the list' : 'Back to the form', keys: ['Escape'], run: leave },
    { label: 'Find a word in the glossary', keys: ['F'], run: () => input.current?.focus() },
  ])

  const walk = (event: KeyboardEvent) => {
    const all = [...(page.current?.querySelectorAll<HTMLElement>('.term') ?? [])]
    const at = all.findIndex((term) => term.matches(':focus'))
    if (event.key === 'ArrowDown') all[at + 1]?.focus()
    else if (event.key === 'ArrowUp' && at >= 0) (all[at - 1] ?? input.current)?.focus()
    else if (event.key === 'Escape' && event.target === input.current && typed === '') leave()
    else if (event.key === 'Escape' && typed !== '') {
      setTyped('')
      input.current?.focus()
    } else return
    event.preventDefault()
  }

  return (
    <article ref={page} className="glossary" onKeyDown={walk}>
      <header className="page-head">
        <h1>Glossary</h1>
        <div className="search">
          <input
            ref={input}
            type="text"
            aria-label="Find a word in English, French, German or Dutch"
            aria-controls="terms"
            placeholder="A word in English, French, German or Dutch"
            autoComplete="off"
            spellCheck={false}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
          {typed === '' && <kbd>F</kbd>}
        </div>
        <p className="quiet count" role="status">
          {wanted.trim() === ''
            ? `${terms.length} words and ${proofs.length} proofs`
            : `${found.length} of ${terms.length} words and ${foundProofs.length} of ${proofs.length} proofs found`}
        </p>
        {from !== '' && (
          <p className="head-actions">
            <button type="button" className="plain-button" onClick={leave}>
              Back to the form <kbd>Esc</kbd>
            </button>
          </p>
        )}
      </header>
      {found.length + foundProofs.length === 0 && (
        <p className="notice">
          No field, part or proof is called “{wanted.trim()}” in any of the four languages. Try fewer letters.
        </p>
      )}
      <ul id="terms" className="terms" aria-label="Words">
        {found.map((term) => (
          <Term key={term.key} term={term} chosen={term.key === termKey} />
        ))}
      </ul>
      {foundProofs.length > 0 && (
        <section className="proof-terms" aria-labelledby="proof-terms">
          <h2 id="proof-terms">Proofs</h2>
          <ul className="terms" aria-label="Proofs">
            {foundProofs.map((term) => (
              <Proof key={term.key} term={term} />
            ))}
          </ul>
        </section>
      )}
      <p className="quiet glossary-foot">
        Names for which no print is named are the common usage of the trade, written from memory; a handbook may use
        another.
      </p>
    </article>
  )
}
