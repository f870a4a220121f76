import { useQueryClient } from '@tanstack/react-query'
import { type KeyboardEvent, useCallback, useDeferredValue, useEffect, useMemo, useReducer, useState } from 'react'
import { useLocation } from 'wouter'
import type { CaliberEntry, Source } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { Overrule } from '../../../core/proofs/severity.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { isListKey, readEntry } from '../../../core/record/read-entry.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { call } from '../../api/hooks.ts'
import { useFamily } from '../../api/use-family.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import type { KeepOverrule } from '../../components/overrule.tsx'
import { ProofList, proofSummary } from '../../components/proof-list.tsx'
import { say } from '../../components/say.ts'
import { shownAs } from '../../components/shown-as.ts'
import { glossaryPlace } from '../glossary/glossary-place.ts'
import { ArrangeFields } from './arrange-fields.tsx'
import { AttachmentPanel } from './attachment-panel.tsx'
import { cellOfList, cellOfNote } from './cells.ts'
import { chosenIndex, chosenReading } from './chosen-reading.ts'
import { rememberedInHand, rememberInHand } from './draft-mirror.ts'
import { EntryFields, walkByKey } from './entry-fields.tsx'
import { foundProblems } from './entry-problems.ts'
import { entryReducer, openEntry } from './entry-state.ts'
import { FieldHelp } from './field-help.tsx'
import { formSections } from './form-sections.ts'
import { goToCell } from './form-walk.ts'
import { proofMarks } from './proof-marks.ts'
import { settledEntry } from './settled-entry.ts'
import { SourceBar } from './source-bar.tsx'
import { useEntryKeys } from './use-entry-keys.ts'
import { useHandbook } from './use-handbook.ts'
import { type Keeping, useKeptDraft } from './use-kept-draft.ts'
import { VariantsLine } from './variants-line.tsx'

const keepingWords: Readonly<Record<Keeping, string>> = {
  nothing: '',
  keeping: 'Keeping the draft…',
  kept: 'Draft kept',
  'not-kept': 'Draft not kept in the library: it cannot be reached. It is safe in this window, and is tried again.',
}

const none: readonly Overrule[] = []

const goToKey = (key: string) => goToCell(isListKey(key) ? cellOfList(key, 0) : key)

const linkToCell = (key: string) => (
  <button type="button" className="entry-link" onClick={() => goToKey(key)}>
    {labelOf(key)}
  </button>
)

interface EntryFormProps {
  readonly caliberId: number | null
  readonly startAt: string | undefined
  /** What the library holds, and what the form opens with: the same, or a draft of it. */
  readonly stored: CaliberEntry
  readonly opened: CaliberEntry
  readonly sources: readonly (Source & { readonly values: number })[]
  /** The caliber is saved; the next one of this maker is to be entered. */
  readonly onNext: (maker: string) => void
}

/** The form of one caliber, with its source bar and its proofs beside it. */
export const EntryForm = ({ caliberId, startAt, stored, opened, sources, onNext }: EntryFormProps) => {
  const [, go] = useLocation()
  const queries = useQueryClient()
  const units = useMemo(() => Object.fromEntries(sources.map((one) => [one.key, one.unitsAsPrinted])), [sources])
  const [state, dispatch] = useReducer(entryReducer, opened, (entry) => openEntry(entry, rememberedInHand(), units))
  const { entry, inHand } = state
  const source = sources.find(({ key }) => key === inHand.source)
  const [cell, setCell] = useState('maker')
  const [namesShown, setNamesShown] = useState(false)
  const [insist, setInsist] = useState(false)
  const [refusal, setRefusal] = useState<{ readonly text: string } | null>(null)
  const [draftLine, setDraftLine] = useState<'restored' | 'discarded' | null>(opened === stored ? null : 'restored')
  const draft = useKeptDraft(caliberId, entry, stored)

  const proved = useDeferredValue(entry)
  const read = useMemo(() => readEntry(proved), [proved])
  const family = useFamily(caliberId, read.caliber)
  const reports = useMemo(() => proofReports(family), [family])
  const marks = useMemo(() => proofMarks(reports), [reports])
  const problems = useMemo(() => foundProblems(read.problems), [read])
  const withoutSource = useMemo(
    () =>
      (Object.keys(entry.fields) as CaliberFieldKey[]).filter((key) => {
        const reading = chosenReading(entry.fields[key])
        return Object.hasOwn(caliberFields, key) && reading?.source === undefined && (reading?.printed ?? '') !== ''
      }),
    [entry.fields],
  )

  useEffect(() => {
    goToKey(startAt ?? 'maker')
  }, [startAt])
  useEffect(() => rememberInHand(inHand), [inHand])
  useEffect(() => dispatch({ type: 'know-units', units }), [units])
  useEffect(() => {
    if (refusal) document.getElementById('entry-refusal')?.focus()
  }, [refusal])
  useEffect(() => {
    // The note of a reading is in sight only from its field.
    if (state.cameTo !== null && !goToCell(state.cameTo)) goToCell(state.cameTo.split('.')[0] ?? '')
  }, [state])

  const keepOverrule = useCallback<KeepOverrule>(async (proof, overrule) => {
    dispatch({ type: 'overrule', proof, overrule })
    return null
  }, [])

  // Said after a breath, so that a reader of the page hears how proofs stand and not every key stroke.
  const [heard, setHeard] = useState('')
  useEffect(() => {
    const disagreeing = reports
      .filter((report) => shownAs(report) === 'disagrees')
      .map(({ proof }) => proofTitle(proof))
    const text = disagreeing.length > 0 ? `Disagrees: ${disagreeing.join('; ')}.` : `${proofSummary(reports)}.`
    const timer = setTimeout(() => setHeard(text), 1200)
    return () => clearTimeout(timer)
  }, [reports])

  const name = [entry.maker, entry.designation].filter((part) => part.trim() !== '').join(' ')
  const storedName = `${stored.maker} ${stored.designation}`.trim()

  const save = async (next: boolean) => {
    const now = foundProblems(readEntry(entry).problems)
    setRefusal(null)
    if (now.length > 0) {
      setInsist(true)
      const count = now.length === 1 ? 'one value' : `${now.length} values`
      setRefusal({ text: `Not saved: ${count} cannot be read. Nothing is lost.` })
      return
    }
    await draft.stop()
    try {
      const { id } = await call('caliber.save', { caliberId, entry: settledEntry(entry) })
      draft.saved()
      await queries.invalidateQueries()
      say(`Saved ${name}. ${proofSummary(reports)}.`)
      if (next) onNext(entry.maker.trim())
      else go(`/caliber/${id}`)
    } catch (error) {
      draft.goOn()
      setRefusal({ text: failureText(error) })
    }
  }

  const leave = async () => {
    const changed = state.past.length > 0 || draftLine === 'restored'
    await draft.send()
    await queries.invalidateQueries({ queryKey: ['draft.read'] })
    await queries.invalidateQueries({ queryKey: ['library.status'] })
    if (changed) say(`What was typed of ${name || 'the new caliber'} is kept as a draft.`)
    go(caliberId === null ? '/' : `/caliber/${caliberId}`)
  }

  /** Leaves for the glossary at the word one is in; the draft waits, and one key comes back to the field. */
  const lookUp = async () => {
    const [word = ''] = cell.split('.')
    const known = Object.hasOwn(caliberFields, word) || isListKey(word)
    await draft.send()
    const form = caliberId === null ? '/new' : `/caliber/${caliberId}/edit`
    glossaryPlace.from = known ? `${form}/${word}` : form
    go(known ? `/glossary/${word}` : '/glossary')
  }

  const names = () => (namesShown ? void lookUp() : setNamesShown(true))

  const discard = () => {
    dispatch({ type: 'replace', entry: stored })
    setDraftLine('discarded')
    setRefusal(null)
    setInsist(false)
    goToCell('maker')
  }

  const addSource = async (source: Source): Promise<boolean> => {
    try {
      await call('source.save', { source })
      await queries.invalidateQueries({ queryKey: ['sources.list'] })
      say(`Added ${source.title} to the sources.`)
      return true
    } catch (error) {
      setRefusal({ text: failureText(error) })
      return false
    }
  }

  const handbook = useHandbook(source, inHand, (taken) => dispatch({ type: 'take-in-hand', inHand: taken }))
  const keepColumns = (columns: readonly string[]) =>
    handbook.keepColumns(columns).then(
      () => goToCell(cell),
      (error: unknown) => setRefusal({ text: failureText(error) }),
    )
  useCommands([
    { label: 'Save and enter the next caliber', keys: ['Ctrl+Shift+S'], run: () => void save(true) },
    { label: 'Arrange the fields for this source', keys: ['Alt+A'], run: handbook.arrange },
    { label: 'Turn to the next page of the source', keys: ['Alt+PageDown'], run: () => handbook.turn(1) },
    { label: 'Turn to the page before', keys: ['Alt+PageUp'], run: () => handbook.turn(-1) },
  ])

  const keyInCell = Object.hasOwn(caliberFields, cell) ? (cell as CaliberFieldKey) : undefined
  const readings = keyInCell ? (entry.fields[keyInCell] ?? []) : []
  const chosenAt = chosenIndex(readings)
  useEntryKeys({
    save: () => void save(false),
    saveAndNext: () => void save(true),
    leave: () => void leave(),
    undo: () => dispatch({ type: 'undo' }),
    redo: () => dispatch({ type: 'redo' }),
    jump: (section) => goToCell(section === 0 ? 'bar.source' : (formSections[section - 1]?.first ?? '')),
    names,
    giveSource: () => keyInCell && dispatch({ type: 'give-source', keys: [keyInCell] }),
    addReading: () => keyInCell && dispatch({ type: 'add-reading', key: keyInCell }),
    readings:
      keyInCell && readings.length > 1
        ? {
            choose: (by) =>
              dispatch({
                type: 'choose-reading',
                key: keyInCell,
                index: (chosenAt + by + readings.length) % readings.length,
              }),
            note: () => goToCell(cellOfNote(keyInCell)),
            remove: () => {
              dispatch({ type: 'remove-reading', key: keyInCell, index: chosenAt })
              goToCell(keyInCell)
            },
          }
        : undefined,
    turnPage: handbook.turn,
    arrange: handbook.arrange,
  })

  const removeLine = (event: KeyboardEvent<HTMLElement>) => {
    const [list = '', line] = event.target instanceof HTMLElement ? (event.target.dataset.cell ?? '').split('.') : []
    if (!event.ctrlKey || event.key !== 'Backspace' || !isListKey(list)) return
    event.preventDefault()
    dispatch({ type: 'remove-line', list, line: Number(line) })
  }

  return (
    <div className="entry">
      <header className="entry-head">
        <h1>{caliberId === null ? name || 'New caliber' : `Change ${storedName}`}</h1>
        <p className="entry-kept" data-keeping={draft.keeping} role="status">
          {keepingWords[draft.keeping]}
        </p>
      </header>
      {draftLine ? (
        <p className="entry-draft" role="status">
          {draftLine === 'restored' ? `Draft of ${name || 'a new caliber'} restored.` : 'Draft discarded.'}{' '}
          {draftLine === 'restored' ? (
            <button type="button" className="entry-button" onClick={discard}>
              Discard draft
            </button>
          ) : (
            <button
              type="button"
              className="entry-button"
              onClick={() => {
                dispatch({ type: 'undo' })
                setDraftLine('restored')
              }}
            >
              Bring it back
            </button>
          )}
        </p>
      ) : null}
      {refusal ? (
        <div className="entry-refusal" id="entry-refusal" role="alert" tabIndex={-1}>
          <p>{refusal.text}</p>
          {insist && problems.length > 0 ? (
            <ul>
              {problems.map(({ cell: where, text }) => (
                <li key={`${where} ${text}`}>
                  <button type="button" className="entry-link" onClick={() => goToCell(where)}>
                    {text}
                  </button>
                </li>
              ))}
            </ul>
          ) : null}
        </div>
      ) : null}
      <form
        className="entry-body"
        aria-label={caliberId === null ? 'New caliber' : `Change ${storedName}`}
        onSubmit={(event) => event.preventDefault()}
        onKeyDown={(event) => {
          removeLine(event)
          walkByKey(event)
        }}
        onFocus={({ target }) => target.dataset.cell !== undefined && setCell(target.dataset.cell)}
      >
        <div className="entry-bar">
          <SourceBar
            inHand={inHand}
            sources={sources}
            withoutSource={withoutSource}
            dispatch={dispatch}
            addSource={addSource}
            arrange={handbook.arrange}
          />
          <div className="entry-actions">
            <button type="button" className="entry-button" onClick={() => void leave()}>
              Leave <kbd>Esc</kbd>
            </button>
            <button type="button" className="entry-button is-first" onClick={() => void save(false)}>
              Save <kbd>Ctrl S</kbd>
            </button>
          </div>
          <VariantsLine caliberId={caliberId} stored={stored} family={family} />
        </div>
        <AttachmentPanel caliberId={caliberId} inHand={inHand} sources={sources} />
        <nav className="entry-sections" aria-label="Sections of the form">
          <ol>
            {formSections.map(({ name: section, label, first }, at) => (
              <li key={section}>
                <button type="button" className="entry-link" onClick={() => goToCell(first)}>
                  <kbd>{at + 1}</kbd>
                  <span>{label}</span>
                </button>
              </li>
            ))}
          </ol>
          <p className="entry-keys">
            <kbd>Enter</kbd> on, <kbd>Shift Enter</kbd> back
            <br />
            <kbd>Alt 0</kbd> source, <kbd>Alt 1</kbd>–<kbd>8</kbd> sections
            <br />
            <kbd>Alt PgDn</kbd> <kbd>Alt PgUp</kbd> turn the page
            <br />
            <kbd>Ctrl Z</kbd> takes back
          </p>
        </nav>
        <div className="entry-middle">
          <EntryFields
            caliberId={caliberId}
            state={state}
            source={source}
            family={family}
            marks={marks}
            problems={problems}
            insist={insist}
            dispatch={dispatch}
          />
          <p className="entry-after">
            <button type="button" className="entry-button" data-after-last onClick={() => void save(true)}>
              Save and enter the next <kbd>Ctrl Shift S</kbd>
            </button>
          </p>
        </div>
        <aside className="entry-side">
          <FieldHelp
            cell={cell}
            readings={readings}
            sources={sources}
            inHand={inHand}
            namesShown={namesShown}
            names={names}
            dispatch={dispatch}
          />
          <div className="entry-proofs">
            <ProofList
              reports={reports}
              linkTo={linkToCell}
              overrules={proved.overrules ?? none}
              keepOverrule={keepOverrule}
            />
          </div>
          <p className="out-of-sight" role="status">
            {heard}
          </p>
        </aside>
      </form>
      {handbook.arranging && source ? (
        <ArrangeFields
          title={source.title || source.key}
          columns={source.columns ?? []}
          onSave={(columns) => void keepColumns(columns)}
          onClose={handbook.stopArranging}
        />
      ) : null}
    </div>
  )
}
