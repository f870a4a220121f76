import { type ChangeEvent, useState } from 'react'
import { useLocation } from 'wouter'
import { wordImport } from '../../../core/wording/import-report.ts'
import { call, useChange } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'

interface Trial {
  readonly name: string
  readonly text: string
  /** What importing would do, line by line. */
  readonly lines: readonly string[]
  readonly anything: boolean
}

/** A file is read on trial first: what it would add, change and leave out, and why; then it is imported in one step. */
export const ImportPage = () => {
  const [, go] = useLocation()
  const [trial, setTrial] = useState<Trial>()
  const [problem, setProblem] = useState('')
  const importing = useChange('exchange.import')
  useCommands([{ label: 'Back to the list', keys: ['Escape'], run: () => go('/') }])

  const tryFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    setTrial(undefined)
    setProblem('')
    if (file === undefined) return
    try {
      const text = await file.text()
      const counts = await call('exchange.import', { name: file.name, text, dryRun: true })
      setTrial({
        name: file.name,
        text,
        lines: wordImport(counts, true),
        anything: counts.added + counts.updated + counts.kept.length > 0,
      })
    } catch (error) {
      setProblem(failureText(error))
    }
  }
  const takeIn = ({ name, text }: Trial) =>
    importing.mutate(
      { name, text },
      {
        onSuccess: (counts) => {
          say(`${name}: ${wordImport(counts, false)[0]} Ctrl Z takes the import back.`)
          go('/')
        },
        onError: (error) => setProblem(failureText(error)),
      },
    )

  return (
    <article className="import">
      <h1>Import a file</h1>
      <label>
        A Lignebook file (.json), or a table of calibers (.csv)
        <input type="file" accept=".json,.csv,application/json,text/csv" onChange={tryFile} />
      </label>
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      {trial && (
        <section aria-label="What would be done" aria-live="polite">
          <ul>
            {trial.lines.map((line) => (
              <li key={line}>{line.trim()}</li>
            ))}
          </ul>
          <p className="actions">
            <button
              type="button"
              className="plain-button chief"
              disabled={!trial.anything || importing.isPending}
              onClick={() => takeIn(trial)}
            >
              {importing.isPending ? 'Importing…' : `Import ${trial.name}`}
            </button>
          </p>
        </section>
      )}
      <p className="quiet">Nothing is stored until you press Import, and one step takes all of it back.</p>
    </article>
  )
}
