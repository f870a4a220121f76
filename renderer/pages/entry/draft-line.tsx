interface DraftLineProps {
  readonly name: string
  readonly line: 'restored' | 'discarded'
  readonly discard: () => void
  readonly bringBack: () => void
}

/** Says that the form opened with a draft, which can be discarded and brought back. */
export const DraftLine = ({ name, line, discard, bringBack }: DraftLineProps) => (
  <p className="entry-draft" role="status">
    {line === 'restored' ? `Draft of ${name || 'a new caliber'} restored.` : 'Draft discarded.'}{' '}
    {line === 'restored' ? (
      <button type="button" className="entry-button" onClick={discard}>
        Discard draft
      </button>
    ) : (
      <button type="button" className="entry-button" onClick={bringBack}>
        Bring it back
      </button>
    )}
  </p>
)
