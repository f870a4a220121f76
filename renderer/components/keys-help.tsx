import { useEffect, useRef } from 'react'
import { useAllCommands } from './commands.ts'
import { Keys } from './keys.tsx'

/** Which key does what from here. */
export const KeysHelp = ({ onClose }: { onClose: () => void }) => {
  const dialog = useRef<HTMLDialogElement>(null)
  const commands = useAllCommands().filter(({ keys }) => keys.length > 0)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} className="floating keys-help" aria-labelledby="keys-help" onClose={onClose}>
      <h2 id="keys-help">Keys</h2>
      <dl>
        {commands.map(({ label, keys }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>
              <Keys keys={keys} />
            </dd>
          </div>
        ))}
      </dl>
      <form method="dialog">
        <button type="submit" className="plain-button">
          Close
        </button>
      </form>
    </dialog>
  )
}
