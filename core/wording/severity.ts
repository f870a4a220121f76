import type { OverruleSeverity, Weight } from '../proofs/severity.ts'

/** What an overrule makes of a finding, as a word after the true outcome. */
export const overruleWords: Readonly<Record<OverruleSeverity, string>> = {
  accepted: 'accepted',
  doubtful: 'counts as doubtful',
  wrong: 'counts as wrong',
}

/** The mark of a finding that was overruled, so that none is told by colour alone. */
export const overruleMark = '✎'

const closed = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`)

/** Says what the owner made of a finding and why; where the finding has changed since, that too. */
export const overruleSentence = ({ severity, reason, applies }: NonNullable<Weight['overruled']>): string => {
  const word = overruleWords[severity]
  const said = closed(`${word.charAt(0).toUpperCase()}${word.slice(1)}: ${reason.trim()}`)
  return applies ? said : `${said} The finding has changed since; look again.`
}
