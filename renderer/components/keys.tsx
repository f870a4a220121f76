const shown: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
}

/** Keys as they stand on the keyboard. */
export const Keys = ({ keys }: { keys: readonly string[] }) => (
  <span className="keys">
    {keys.map((one) => (
      <kbd key={one}>{one.replace(/[A-Za-z]+$/, (name) => shown[name] ?? name).replace(/\+(?=.)/g, ' ')}</kbd>
    ))}
  </span>
)
