import { useCallback, useMemo } from 'react'
import { Link, useLocation } from 'wouter'
import type { CaliberEntry, Source } from '../../../core/exchange/library-file.ts'
import type { Overrule } from '../../../core/proofs/severity.ts'
import { formatLength } from '../../../core/quantities/format-length.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { useCaliber, useChange, useSources } from '../../api/hooks.ts'
import { saveExport } from '../../api/save-export.ts'
import { useFamily } from '../../api/use-family.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { ProofList } from '../../components/proof-list.tsx'
import { say } from '../../components/say.ts'
import { fieldPlace, useSoughtField } from '../../components/use-sought-field.ts'
import { useTitle } from '../../components/use-title.ts'
import { yearsText } from '../../components/years-text.ts'
import { BarrelSection } from '../../drawings/barrel-section.tsx'
import { TrainPlan } from '../../drawings/train-plan.tsx'
import { listPlace } from '../calibers/list-place.ts'
import { BeatLine, SpringLine } from './bench-lines.tsx'
import { CaliberAttachments } from './caliber-attachments.tsx'
import { CaliberGroups } from './caliber-groups.tsx'
import { CaliberLists } from './caliber-lists.tsx'
import { FamilyLine } from './family-line.tsx'
import { useKeepOverrule } from './use-keep-overrule.ts'

const none: readonly Overrule[] = []

const backTo = (): string => (listPlace.back === '/' ? 'Back to the list' : 'Back to the proofs')

/**
 * One caliber, to be read: figures for the bench first, then drawings, proofs and every value with its source. It opens
 * `at` a field where one came for it.
 */
export const CaliberPage = ({ id, at }: { id: number; at?: string | undefined }) => {
  const [, go] = useLocation()
  const caliber = useCaliber(id)
  const sources = useSources()
  const removing = useChange('caliber.remove')
  const name = caliber.data ? `${caliber.data.entry.maker} ${caliber.data.entry.designation}` : ''
  const remove = () => {
    // The page is left first: what it shows is about to be gone.
    go('/')
    removing.mutateAsync({ id }).then(
      () => say(`Removed ${name}. Ctrl Z brings it back.`),
      (error: unknown) => say(failureText(error)),
    )
  }
  useCommands([
    { label: 'Edit this caliber', keys: ['E'], run: () => go(`/caliber/${id}/edit`) },
    { label: 'Spring bench', keys: ['S'], run: () => go(`/caliber/${id}/spring`) },
    { label: 'Find missing counts', keys: ['M'], run: () => go(`/caliber/${id}/missing`) },
    { label: 'Rate and amplitude', keys: ['R'], run: () => go(`/rate/${id}`) },
    { label: 'Set counted teeth beside this caliber', keys: ['B'], run: () => go(`/caliber/${id}/counted`) },
    { label: 'Play on the bench', keys: ['K'], run: () => go(`/play/${id}`) },
    { label: 'Print this caliber', keys: ['Ctrl+P'], run: () => print() },
    {
      label: 'Export this caliber',
      keys: [],
      run: () => saveExport(name, id).catch((error: unknown) => say(failureText(error))),
    },
    { label: 'Merge another caliber into this one', keys: [], run: () => go(`/caliber/${id}/merge`) },
    { label: 'Remove this caliber', keys: ['Delete'], run: remove },
    { label: backTo(), keys: ['Escape', 'Backspace'], run: () => go(listPlace.back) },
  ])
  if (caliber.error)
    return (
      <p className="notice" role="alert">
        {failureText(caliber.error)} <Link href="/">Back to the list</Link>
      </p>
    )
  if (!caliber.data) return <p className="notice quiet">Reading…</p>
  return <Read id={id} at={at} entry={caliber.data.entry} sources={sources.data?.sources ?? []} />
}

interface ReadProps {
  readonly id: number
  readonly at: string | undefined
  readonly entry: CaliberEntry
  readonly sources: readonly Source[]
}

const Read = ({ id, at, entry, sources }: ReadProps) => {
  const read = useMemo(() => readEntry(entry), [entry])
  const { problems, unknownKeys } = read
  const caliber = useFamily(id, read.caliber)
  const { values } = caliber
  const reports = useMemo(() => proofReports(caliber), [caliber])
  useTitle(`${entry.maker} ${entry.designation}`)
  useSoughtField(at)
  const keepOverrule = useKeepOverrule(id)
  const years = yearsText(values.firstYear, values.lastYear)
  const size = values.diameterMm ?? values.lengthMm
  const linkTo = useCallback((key: string) => <Link href={`/caliber/${id}/edit/${key}`}>{labelOf(key)}</Link>, [id])
  return (
    <article className="caliber">
      <header className="caliber-head">
        <h1 id={fieldPlace('designation')} tabIndex={-1}>
          {entry.maker} {entry.designation}
        </h1>
        <p className="size">
          {size !== undefined && (
            <>
              <span>{formatLength(size, 'ligne')}</span>
              <span>
                {values.diameterMm === undefined && values.widthMm !== undefined
                  ? `${size} × ${values.widthMm} mm`
                  : formatLength(size, 'mm')}
              </span>
            </>
          )}
          {years && <span>{years}</span>}
        </p>
        <p className="head-actions">
          <Link href={listPlace.back} className="plain-button">
            {backTo()} <kbd>Esc</kbd>
          </Link>
          <Link href={`/caliber/${id}/missing`} className="plain-button">
            Find missing counts <kbd>M</kbd>
          </Link>
          <Link href={`/caliber/${id}/edit`} className="plain-button">
            Edit <kbd>E</kbd>
          </Link>
        </p>
        {values.alsoKnownAs && <p className="quiet other-names">Also known as {values.alsoKnownAs.join(', ')}.</p>}
        <FamilyLine id={id} caliber={read.caliber} />
      </header>
      <section className="bench-lines" aria-label="Spring and beat">
        <SpringLine id={id} name={`${entry.maker} ${entry.designation}`} caliber={caliber} sources={sources} />
        <BeatLine id={id} values={values} />
      </section>
      <p className="caution">
        Order the mainspring that the maker specified. A mainspring let go can hurt: let it down before the barrel
        bridge comes off, use a winder, and mind your eyes.
      </p>
      <div className="caliber-body">
        <div className="drawings">
          <TrainPlan values={values} />
          <BarrelSection values={values} />
        </div>
        <ProofList reports={reports} linkTo={linkTo} overrules={entry.overrules ?? none} keepOverrule={keepOverrule} />
        <CaliberGroups
          id={id}
          at={at}
          entry={entry}
          caliber={caliber}
          problems={problems}
          reports={reports}
          sources={sources}
        />
      </div>
      <CaliberLists
        id={id}
        lists={caliber.lists}
        own={read.caliber.lists}
        base={caliber.base?.values.designation}
        name={entry}
      />
      {values.notes && (
        <section className="notes">
          <h2>Notes</h2>
          <p>{values.notes}</p>
        </section>
      )}
      <CaliberAttachments id={id} />
      {unknownKeys.length > 0 && (
        <section className="kept">
          <h2>From a newer version</h2>
          <p className="quiet">Kept as it came, and exported again.</p>
          <dl>
            {unknownKeys.map((key) => (
              <div key={key}>
                <dt>{key}</dt>
                <dd>{entry.fields[key]?.map(({ printed }) => printed).join('; ') ?? JSON.stringify(entry[key])}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </article>
  )
}
