import { depthFindings } from './findings/depth-findings.ts'
import { jewelFindings } from './findings/jewel-findings.ts'
import type { Judged, Sentences } from './findings/judged.ts'
import { movementFindings } from './findings/movement-findings.ts'
import { recordFindings } from './findings/record-findings.ts'
import { sizeFindings } from './findings/size-findings.ts'
import { springFindings } from './findings/spring-findings.ts'
import { trainFindings } from './findings/train-findings.ts'
import { workFindings } from './findings/work-findings.ts'

/** The sentence of every reason that a proof can give. */
export const findingSentences: Sentences = {
  ...trainFindings,
  ...movementFindings,
  ...depthFindings,
  ...springFindings,
  ...jewelFindings,
  ...sizeFindings,
  ...workFindings,
  ...recordFindings,
}

/** What a proof found, in plain words: what was stated, what was found, by how much, what to do. */
export const findingSentence = (judgement: Judged): string =>
  findingSentences[judgement.reason]?.(judgement) ?? judgement.reason
