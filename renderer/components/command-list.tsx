import { useEffect, useId, useRef, useState } from 'react'
import { type Command, useAllCommands } from './commands.ts'
import { Keys } from './keys.tsx'

/** Every action with its keys, found by typing. */
export const CommandList = ({ onClose }: { onClose: () => void }) => {
  const dialog = useRef<HTMLDialogElement>(null)
  const list = useId()
  const [words, setWords] = useState('')
  const [at, setAt] = useState(0)
  const commands = useAllCommands()
  const found = commands.filter(({ label }) =>
    words
      .toLowerCase()
      .split(/\s+/)
      .every((word) => label.toLowerCase().includes(word)),
  )
  const active = Math.min(at, found.length - 1)

  useEffect(() => dialog.current?.showModal(), [])

  const give = (command: Command | undefined) => {
    if (!command) return
    dialog.current?.close()
    // Once the dialog has given the focus back, so that the command may place it.
    setTimeout(command.run)
  }

  return (
    <dialog ref={dialog} className="floating" aria-label="Commands" onClose={onClose}>
      <input
        type="text"
        role="combobox"
        aria-label="Find a command"
        aria-expanded="true"
        aria-controls={list}
        aria-activedescendant={active >= 0 ? `${list}-${active}` : undefined}
        placeholder="What do you want to do?"
        autoComplete="off"
        value={words}
        onChange={(event) => {
          setWords(event.target.value)
          setAt(0)
        }}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') setAt(Math.min(active + 1, found.length - 1))
          else if (event.key === 'ArrowUp') setAt(Math.max(active - 1, 0))
          else if (event.key === 'Enter') give(found[active])
          else return
          event.preventDefault()
        }}
      />
      <div role="listbox" id={list} aria-label="Commands" className="command-list">
        {found.map((command, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above moves through the list and gives the command
          <div
            key={command.label}
            id={`${list}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === active}
            className="command"
            onClick={() => give(command)}
          >
            <span>{command.label}</span>
            <Keys keys={command.keys.slice(0, 1)} />
          </div>
        ))}
      </div>
      {found.length === 0 && <p className="quiet nothing">No command is called that.</p>}
    </dialog>
  )
}
