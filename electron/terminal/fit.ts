import { springProofs } from '../../core/proofs/spring-proofs.ts'
import { fitSpring } from '../../core/springs/fit.ts'
import { proofReports } from '../../core/wording/proof-report.ts'
import { calibersOf } from './calibers-of.ts'
import { type Command, libraryOption, printJson } from './command.ts'
import { table } from './table.ts'

const headings = {
  coilsDown: 'Coils let down',
  coilsWound: 'Coils wound',
  turns: 'Turns',
  fill: 'Share of the free space',
  bestLengthMm: 'Best length, mm',
  mostTurns: 'Most turns',
  hoursPerTurn: 'Hours per barrel turn',
  goingHours: 'Going, h',
  heightClearanceMm: 'Clearance in height, mm',
  arborToThickness: 'Arbor to thickness',
  lengthToThickness: 'Length to thickness',
} as const

export const fit: Command = {
  usage: 'fit FILE.json | fit [--library FILE.sqlite] [--caliber NAME]',
  does: 'Shows how the spring of each caliber sits in its barrel; status 1 where one does not fit.',
  options: { ...libraryOption, caliber: { type: 'string' } },
  run: async (input) => {
    const calibers = await calibersOf(input)
    const fits = calibers.map(({ maker, designation, caliber }) => ({
      maker,
      designation,
      ...fitSpring(caliber.values),
    }))
    if (input.options.json) printJson(input.io, { fits })
    else
      for (const { maker, designation, ...figures } of fits) {
        const rows = Object.entries(headings).map(([key, heading]) => {
          const value = figures[key as keyof typeof headings]
          return [`  ${heading}`, value === null ? 'not known' : value.toFixed(2)]
        })
        input.io.out(`${maker} ${designation}\n${table(rows)}\n\n`)
      }
    const wrong = calibers.some(({ caliber }) =>
      proofReports(caliber).some(
        ({ proof, outcome }) =>
          springProofs.includes(proof) && (outcome === 'disagrees' || outcome === 'outside-range'),
      ),
    )
    const nothing = fits.every(({ maker: _, designation: __, ...figures }) =>
      Object.values(figures).every((value) => value === null),
    )
    return wrong || nothing ? 1 : 0
  },
}
