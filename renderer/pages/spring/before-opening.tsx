import { springCautions } from '../../../core/wording/spring-cautions.ts'

const cautions = ['lettingDown', 'winder', 'eyes', 'brittle', 'ring'] as const

/** What is heeded before a barrel is opened; printed with the sheet. */
export const BeforeOpening = () => (
  <section className="before-opening" aria-labelledby="before-opening">
    <h2 id="before-opening">Before you open the barrel</h2>
    <ul>
      {cautions.map((key) => (
        <li key={key}>{springCautions[key]}</li>
      ))}
    </ul>
    <p className="quiet">The maker’s specification, the rules of your workshop and your own training come first.</p>
  </section>
)
