import { useCallback, useEffect, useMemo, useReducer, useState } from 'react'
import type { CaliberEntry, Source } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { Overrule } from '../../../core/proofs/severity.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { isListKey } from '../../../core/record/read-entry.ts'
import { useCommands } from '../../components/commands.ts'
import type { KeepOverrule } from '../../components/overrule.tsx'
import { ProofList, proofSummary } from '../../components/proof-list.tsx'
import { ArrangeFields } from './arrange-fields.tsx'
import { AttachmentPanel } from './attachment-panel.tsx'
import { cellOfList } from './cells.ts'
import { DraftLine } from './draft-line.tsx'
import { rememberedInHand, rememberInHand } from './draft-mirror.ts'
import { EntryFields } from './entry-fields.tsx'
import { EntryHead } from './entry-head.tsx'
import { entryReducer, openEntry } from './entry-state.ts'
import { FieldHelp } from './field-help.tsx'
import { removeLineByKey, walkByKey } from './form-keys.ts'
import { goToCell } from './form-walk.ts'
import { HeardProofs } from './heard-proofs.tsx'
import { RefusalNote } from './refusal-note.tsx'
import { SectionList } from './section-list.tsx'
import { SourceBar } from './source-bar.tsx'
import { useCellKeys } from './use-cell-keys.ts'
import { useHandbook } from './use-handbook.ts'
import { useKeptDraft } from './use-kept-draft.ts'
import { useLeaving } from './use-leaving.ts'
import { useProvedEntry } from './use-proved-entry.ts'
import { useSaving } from './use-saving.ts'
import { VariantsLine } from './variants-line.tsx'

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
  const units = useMemo(() => Object.fromEntries(sources.map((one) => [one.key, one.unitsAsPrinted])), [sources])
  const [state, dispatch] = useReducer(entryReducer, opened, (entry) => openEntry(entry, rememberedInHand(), units))
  const { entry, inHand } = state
  const source = sources.find(({ key }) => key === inHand.source)
  const [cell, setCell] = useState('maker')
  const [namesShown, setNamesShown] = useState(false)
  const [draftLine, setDraftLine] = useState<'restored' | 'discarded' | null>(opened === stored ? null : 'restored')
  const draft = useKeptDraft(caliberId, entry, stored)
  const { proved, family, reports, marks, problems, withoutSource } = useProvedEntry(caliberId, entry)

  useEffect(() => {
    goToKey(startAt ?? 'maker')
  }, [startAt])
  useEffect(() => rememberInHand(inHand), [inHand])
  useEffect(() => dispatch({ type: 'know-units', units }), [units])
  useEffect(() => {
    // The note of a reading is in sight only from its field.
    if (state.cameTo !== null && !goToCell(state.cameTo)) goToCell(state.cameTo.split('.')[0] ?? '')
  }, [state])

  const keepOverrule = useCallback<KeepOverrule>(async (proof, overrule) => {
    dispatch({ type: 'overrule', proof, overrule })
    return null
  }, [])

  const name = [entry.maker, entry.designation].filter((part) => part.trim() !== '').join(' ')
  const storedName = `${stored.maker} ${stored.designation}`.trim()
  const changed = state.past.length > 0 || draftLine === 'restored'
  const { leave, lookUp } = useLeaving({ caliberId, draft, name, changed })
  const savedText = () => `Saved ${name}. ${proofSummary(reports)}.`
  const { save, addSource, refusal, insist, refuse, forget } = useSaving({ caliberId, entry, draft, savedText, onNext })
  const names = () => (namesShown ? void lookUp(cell) : setNamesShown(true))

  const discard = () => {
    dispatch({ type: 'replace', entry: stored })
    setDraftLine('discarded')
    forget()
    goToCell('maker')
  }
  const bringBack = () => {
    dispatch({ type: 'undo' })
    setDraftLine('restored')
  }

  const handbook = useHandbook(source, inHand, (taken) => dispatch({ type: 'take-in-hand', inHand: taken }))
  const keepColumns = (columns: readonly string[]) => handbook.keepColumns(columns).then(() => goToCell(cell), refuse)
  useCommands([
    { label: 'Save and enter the next caliber', keys: ['Ctrl+Shift+S'], run: () => void save(true) },
    { label: 'Arrange the fields for this source', keys: ['Alt+A'], run: handbook.arrange },
    { label: 'Turn to the next page of the source', keys: ['Alt+PageDown'], run: () => handbook.turn(1) },
    { label: 'Turn to the page before', keys: ['Alt+PageUp'], run: () => handbook.turn(-1) },
  ])

  const keyInCell = Object.hasOwn(caliberFields, cell) ? (cell as CaliberFieldKey) : undefined
  const readings = keyInCell ? (entry.fields[keyInCell] ?? []) : []
  useCellKeys(keyInCell, readings, dispatch, {
    save: () => void save(false),
    saveAndNext: () => void save(true),
    leave: () => void leave(),
    names,
    turnPage: handbook.turn,
    arrange: handbook.arrange,
  })

  return (
    <div className="entry">
      <EntryHead title={caliberId === null ? name || 'New caliber' : `Change ${storedName}`} keeping={draft.keeping} />
      {draftLine ? <DraftLine name={name} line={draftLine} discard={discard} bringBack={bringBack} /> : null}
      {refusal ? <RefusalNote refusal={refusal} problems={insist ? problems : []} /> : null}
      <form
        className="entry-body"
        aria-label={caliberId === null ? 'New caliber' : `Change ${storedName}`}
        onSubmit={(event) => event.preventDefault()}
        onKeyDown={(event) => {
          removeLineByKey(event, dispatch)
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
        <SectionList />
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
          <HeardProofs reports={reports} />
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
