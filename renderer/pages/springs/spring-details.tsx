import { useEffect, useRef } from 'react'
import { springLine } from '../../../core/springs/spring-line.ts'
import { springCautions } from '../../../core/wording/spring-cautions.ts'
import { type StoredSpring, springColumns, springText } from './spring-columns.ts'

interface SpringDetailsProps {
  readonly spring: StoredSpring
  readonly edit: () => void
  readonly bookOut: () => void
  readonly remove: () => void
  readonly close: () => void
}

/** A spring in full, with what can be done with it. */
export const SpringDetails = ({ spring, edit, bookOut, remove, close }: SpringDetailsProps) => {
  const heading = useRef<HTMLHeadingElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus comes here with each spring that is opened
  useEffect(() => heading.current?.focus(), [spring.id])
  return (
    <section aria-label={`Spring ${spring.supplierRef}`}>
      <h2 ref={heading} tabIndex={-1}>
        {spring.supplierRef}
      </h2>
      <p className="spring-line">{springLine(spring, 'height-thickness-length')} mm</p>
      <p className="quiet">{springLine(spring, 'inches')} in</p>
      <dl>
        {springColumns
          .filter(({ key }) => !['supplierRef', 'heightMm', 'thicknessMm', 'lengthMm'].includes(key))
          .map(({ key, label, unit }) => {
            const text = springText(spring, key)
            return (
              <div key={key}>
                <dt>{label}</dt>
                <dd>{text === '' ? <span className="quiet">–</span> : unit ? `${text} ${unit}` : text}</dd>
              </div>
            )
          })}
      </dl>
      <p className="actions">
        <button type="button" className="plain-button" onClick={edit}>
          Edit <kbd>E</kbd>
        </button>
        <button type="button" className="plain-button" onClick={bookOut}>
          Book out <kbd>B</kbd>
        </button>
        <button type="button" className="plain-button" onClick={remove}>
          Remove <kbd>Del</kbd>
        </button>
        <button type="button" className="plain-button" onClick={close}>
          Close <kbd>Esc</kbd>
        </button>
      </p>
      <p className="quiet spring-caution">{springCautions.handling}</p>
    </section>
  )
}
