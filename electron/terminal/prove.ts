import { cancelledLine } from '../../core/wording/cancelled-line.ts'
import { outcomeWords } from '../../core/wording/outcome.ts'
import { proofReports } from '../../core/wording/proof-report.ts'
import { overruleMark, overruleSentence } from '../../core/wording/severity.ts'
import { workingLine } from '../../core/wording/working-line.ts'
import { calibersOf } from './calibers-of.ts'
import { type Command, libraryOption, printJson } from './command.ts'

export const prove: Command = {
  usage: 'prove FILE.json | prove [--library FILE.sqlite] [--caliber NAME]',
  does: 'Proves each caliber; status 1 where a finding counts as wrong: a proof disagrees and is not overruled, or the owner says so.',
  options: { ...libraryOption, caliber: { type: 'string' } },
  run: async (input) => {
    const calibers = (await calibersOf(input)).map(({ maker, designation, caliber }) => ({
      maker,
      designation,
      proofs: proofReports(caliber),
    }))
    if (input.options.json) printJson(input.io, { calibers })
    else
      for (const { maker, designation, proofs } of calibers) {
        input.io.out(`${maker} ${designation}\n`)
        for (const { proof, outcome, message, overruled, hints, working } of proofs) {
          const { mark, word } = outcomeWords[outcome]
          input.io.out(`  ${`${mark} ${word}`.padEnd(15)}  ${proof}\n      ${message}\n`)
          if (overruled) input.io.out(`      ${overruleMark} ${overruleSentence(overruled)}\n`)
          for (const hint of hints) input.io.out(`      A misprint? ${hint}\n`)
          if (outcome !== 'disagrees') continue
          for (const step of working) {
            const cancelled = cancelledLine(step)
            input.io.out(`      ${workingLine(step)}\n`)
            if (cancelled !== null) input.io.out(`      cancelled: ${cancelled}\n`)
          }
        }
        input.io.out('\n')
      }
    return calibers.some(({ proofs }) => proofs.some(({ severity }) => severity === 'wrong')) ? 1 : 0
  },
}
