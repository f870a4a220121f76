import { formSections } from './form-sections.ts'
import { goToCell } from './form-walk.ts'

/** The sections of the form, each a step away, and the keys one types with. */
export const SectionList = () => (
  <nav className="entry-sections" aria-label="Sections of the form">
    <ol>
      {formSections.map(({ name, label, first }, at) => (
        <li key={name}>
          <button type="button" className="entry-link" onClick={() => goToCell(first)}>
            <kbd>{at + 1}</kbd>
            <span>{label}</span>
          </button>
        </li>
      ))}
    </ol>
    <p className="entry-keys">
      <kbd>Enter</kbd> on, <kbd>Shift Enter</kbd> back
      <br />
      <kbd>Alt 0</kbd> source, <kbd>Alt 1</kbd>–<kbd>8</kbd> sections
      <br />
      <kbd>Alt PgDn</kbd> <kbd>Alt PgUp</kbd> turn the page
      <br />
      <kbd>Ctrl Z</kbd> takes back
    </p>
  </nav>
)
