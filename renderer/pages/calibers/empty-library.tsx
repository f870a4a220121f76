import { Link } from 'wouter'
import { useChange } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'

/** What stands where the list will be while the library holds nothing. */
export const EmptyLibrary = () => {
  const demo = useChange('library.load-demo')
  return (
    <div className="empty">
      <h1>This library is empty</h1>
      <p>
        Enter the first caliber from a handbook or from your own notes. Lignebook proves each figure against the others
        while you type.
      </p>
      <p className="actions">
        <Link href="/new" className="plain-button chief">
          Enter the first caliber
        </Link>
        <button
          type="button"
          className="plain-button"
          disabled={demo.isPending}
          onClick={() =>
            demo.mutate(
              {},
              {
                onSuccess: ({ added }) =>
                  say(`${added} demo calibers are in the library. Three carry a misprint: look for the cross.`),
              },
            )
          }
        >
          Open the demo library
        </button>
      </p>
      <p className="quiet">
        The demo holds invented calibers out of a crate of movements. Three of them carry a misprint of the kind that
        handbooks have; the proofs show which value, and why. You can also <Link href="/import">import a file</Link>.
      </p>
      {demo.error && (
        <p className="notice" role="alert">
          {failureText(demo.error)}
        </p>
      )}
    </div>
  )
}
