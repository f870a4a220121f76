import { useEffect, useMemo, useRef, useSyncExternalStore } from 'react'

/** Something a person can do from where they are, with the keys that do it. */
export interface Command {
  readonly label: string
  /** As `event.key` names it, with modifiers before: `Ctrl+K`, `/`, `E`. The first is the one shown. */
  readonly keys: readonly string[]
  readonly run: () => void
}

/** The commands of one component; the place stays the same while they change. */
interface Group {
  readonly place: object
  readonly commands: readonly Command[]
}

let groups: readonly Group[] = []
const listeners = new Set<() => void>()
const change = (next: typeof groups) => {
  groups = next
  for (const listener of listeners) listener()
}
const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

const latestFirst = (now: readonly Group[]): Command[] => [...now].reverse().flatMap(({ commands }) => commands)

/** Every command that can be given now; those of the page come before those of the frame. */
export const useAllCommands = (): readonly Command[] => {
  const now = useSyncExternalStore(subscribe, () => groups)
  return useMemo(() => {
    const all = latestFirst(now)
    return all.filter(({ label }, index) => all.findIndex((other) => other.label === label) === index)
  }, [now])
}

/** Offers commands while the component is on the page; those of the frame give way to those of any page. */
export const useCommands = (commands: readonly Command[], { ofFrame = false } = {}): void => {
  const latest = useRef(commands)
  latest.current = commands
  const place = useRef({}).current
  const names = commands.map(({ label, keys }) => `${label}\t${keys.join(' ')}`).join('\n')
  // biome-ignore lint/correctness/useExhaustiveDependencies: offered anew when names or keys change; what they run is always the latest
  useEffect(() => {
    const group: Group = {
      place,
      commands: latest.current.map(
        (command, index): Command => ({
          ...command,
          run: () => latest.current[index]?.run(),
        }),
      ),
    }
    if (groups.some((other) => other.place === place))
      change(groups.map((other) => (other.place === place ? group : other)))
    else change(ofFrame ? [group, ...groups] : [...groups, group])
  }, [names])
  useEffect(() => () => change(groups.filter((other) => other.place !== place)), [place])
}

/** The name of the keys pressed: `Ctrl+Shift+Z`. Cmd counts as Ctrl. */
export const keysOf = (event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>): string => {
  const held = event.ctrlKey || event.metaKey
  const key = event.key.length === 1 ? event.key.toUpperCase() : event.key
  return `${held ? 'Ctrl+' : ''}${event.altKey ? 'Alt+' : ''}${held && event.shiftKey && /^[A-Z]$/.test(key) ? 'Shift+' : ''}${key}`
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('input:not([type=range], [type=checkbox]), textarea, select'))

const ofTheText = new Set(['Ctrl+Z', 'Ctrl+Shift+Z', 'Ctrl+Y'])

/** Runs the command whose keys are pressed. Where text is typed, plain keys and undo belong to the text. */
export const runPressed = (event: KeyboardEvent): void => {
  if (event.defaultPrevented || event.isComposing || document.querySelector('dialog[open]')) return
  const keys = keysOf(event)
  if (isTyping(event.target) && (!keys.startsWith('Ctrl+') || ofTheText.has(keys))) return
  const command = latestFirst(groups).find((each) => each.keys.includes(keys))
  if (!command) return
  event.preventDefault()
  command.run()
}
