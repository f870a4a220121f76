import type { ProofLine } from '../api/contract.ts'
import { proofs } from '../proofs/index.ts'
import { workingLine } from '../wording/working-line.ts'

const columns = [
  'maker',
  'designation',
  'proof',
  'outcome',
  'severity',
  'stated',
  'found',
  'unit',
  'difference',
  'allowed',
  'message',
  'working',
  'source',
] as const

const sources: ReadonlyMap<string, string> = new Map(proofs.map(({ id, source }) => [id, source]))

/** The lines of the sheet of proofs as rows of a table, headings first. Figures stay numbers; what there is not is left empty. */
export const rowsFromProofLines = (lines: readonly ProofLine[]): (string | number)[][] => [
  [...columns],
  ...lines.map((line) => [
    line.maker,
    line.designation,
    line.proof,
    line.outcome,
    line.severity,
    line.stated ?? '',
    line.found ?? '',
    line.unit ?? '',
    line.difference ?? '',
    line.allowed ?? '',
    [line.message, line.overruled].filter(Boolean).join(' '),
    line.working.map(workingLine).join('; '),
    sources.get(line.proof) ?? '',
  ]),
]
