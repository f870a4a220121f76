import { Link } from 'wouter'
import { useStatus } from '../api/hooks.ts'
import { useSaid } from './say.ts'

const fileName = (path: string) => path.split(/[\\/]/).at(-1) ?? path

const day = (iso: string) =>
  new Date(iso).toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' })

/** The quiet line under every page: library, draft, backup, disagreement, and what was just done. */
export const StatusLine = () => {
  const { data } = useStatus()
  const said = useSaid()
  return (
    <footer className="status-line">
      {data && (
        <>
          <span title={data.file}>{fileName(data.file)}</span>
          <span>
            {data.calibers} {data.calibers === 1 ? 'caliber' : 'calibers'}
          </span>
          {data.disagreeing > 0 && <span>{data.disagreeing} with proofs that disagree</span>}
          {data.draft && (
            <Link href={data.draft.caliberId === null ? '/new' : `/caliber/${data.draft.caliberId}/edit`}>
              A draft is not saved yet
            </Link>
          )}
          <span>{data.lastBackup === null ? 'No backup yet' : `Backed up ${day(data.lastBackup)}`}</span>
        </>
      )}
      <span className="said" role="status">
        {said}
      </span>
    </footer>
  )
}
