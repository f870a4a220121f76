import type { Keeping } from './use-kept-draft.ts'

const keepingWords: Readonly<Record<Keeping, string>> = {
  nothing: '',
  keeping: 'Keeping the draft…',
  kept: 'Draft kept',
  'not-kept': 'Draft not kept in the library: it cannot be reached. It is safe in this window, and is tried again.',
}

/** What is entered, and whether it is kept. */
export const EntryHead = ({ title, keeping }: { readonly title: string; readonly keeping: Keeping }) => (
  <header className="entry-head">
    <h1>{title}</h1>
    <p className="entry-kept" data-keeping={keeping} role="status">
      {keepingWords[keeping]}
    </p>
  </header>
)
