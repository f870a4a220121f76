import { type GaugeReads, gaugeReads } from '../../core/springs/gauge-reads.ts'
import { rankSprings } from '../../core/springs/rank-springs.ts'
import { springLine } from '../../core/springs/spring-line.ts'
import { figure } from '../../core/wording/figure.ts'
import { gaugeDoubt, gaugeSentence } from '../../core/wording/gauge-sentence.ts'
import { springCautions } from '../../core/wording/spring-cautions.ts'
import { springReason, springVerdictWords } from '../../core/wording/spring-reason.ts'
import { calibersOf, textOf } from './calibers-of.ts'
import { type Command, libraryOption, printJson, UnusableInput } from './command.ts'
import { gaugesOf } from './gauges-of.ts'
import { springsOf } from './springs-of.ts'

const mostShown = 20

/** What the tables make of the printed gauge, beside it; nothing where there is none of either. */
const gaugeFields = (gauge: GaugeReads | null) =>
  gauge === null
    ? {}
    : {
        gaugeReads: gauge.reads.map(({ table, row, measures, beside }) => ({
          table: table.name,
          measures,
          number: row.number,
          mm: row.mm,
          statedMm: beside?.stated ?? null,
          differenceMm: beside?.differenceMm ?? null,
          agrees: beside?.agrees ?? null,
        })),
        gaugeDoubts: gauge.doubts.map(gaugeDoubt),
      }

export const springs: Command = {
  usage: 'springs FILE.json --caliber NAME [--tray TRAY] | springs --library FILE.sqlite --caliber NAME [--tray TRAY]',
  does: 'Ranks the springs in the tray for a caliber; status 1 where none is as specified or acceptable.',
  options: { ...libraryOption, caliber: { type: 'string' }, tray: { type: 'string' } },
  run: async (input) => {
    const { caliber: name, tray } = input.options
    if (typeof name !== 'string') throw new UnusableInput('Name the caliber with --caliber.')
    const [found] = await calibersOf(input)
    if (found === undefined) throw new UnusableInput(`There is no caliber ${name}.`)
    const { place, text } = await textOf(input)
    const stock = springsOf(place, text, typeof tray === 'string' ? tray : undefined)
    const { values } = found.caliber
    const { ranked, counts } = rankSprings(values, stock)
    const gauge = gaugeReads(found.caliber, gaugesOf(place, text))
    const specified = {
      heightMm: values.springHeightMm ?? null,
      thicknessMm: values.springThicknessMm ?? null,
      lengthMm: values.springLengthMm ?? null,
      barrelMm: values.barrelInsideMm ?? null,
      end: values.springEnd ?? null,
      material: values.springMaterial ?? null,
      gauge: values.springGauge ?? null,
      ...gaugeFields(gauge),
    }
    if (input.options.json) {
      const candidates = ranked.map(({ index: _, spring, reasons, verdict, ...figures }) => ({
        supplierRef: spring.supplierRef,
        ...(spring.tray === undefined ? {} : { tray: spring.tray }),
        verdict,
        ...figures,
        reasons: reasons.map(springReason),
      }))
      printJson(input.io, { specified, candidates })
    } else {
      const order = 'height-thickness-length-barrel'
      const line = springLine(
        {
          heightMm: values.springHeightMm,
          thicknessMm: values.springThicknessMm,
          lengthMm: values.springLengthMm,
          barrelMm: values.barrelInsideMm,
        },
        order,
      )
      input.io.out(`${found.maker} ${found.designation}\n  specified: ${line}\n`)
      if (values.springGauge !== undefined) input.io.out(`  gauge as printed: ${values.springGauge}\n`)
      for (const read of gauge?.reads ?? []) input.io.out(`    ${gaugeSentence(read)}\n`)
      for (const doubt of gauge?.doubts ?? []) input.io.out(`    Not looked up. ${gaugeDoubt(doubt)}\n`)
      input.io.out(`  ${springCautions.order}\n\n`)
      for (const { spring, verdict, turns, goingHours, fill, reasons } of ranked.slice(0, mostShown)) {
        const { mark, word } = springVerdictWords[verdict]
        const figures = [
          turns === null ? null : `${figure(turns, 2)} turns`,
          goingHours === null ? null : `${figure(goingHours, 1)} h`,
          fill === null ? null : `fill ${figure(fill * 100, 1)} %`,
        ].filter((text) => text !== null)
        input.io.out(`  ${`${mark} ${word}`.padEnd(15)}  ${spring.supplierRef}  ${springLine(spring, order)}\n`)
        if (figures.length > 0) input.io.out(`      ${figures.join(', ')}\n`)
        for (const reason of reasons) input.io.out(`      ${springReason(reason)}\n`)
      }
      const more = ranked.length - mostShown
      if (more > 0) input.io.out(`  … and ${more} more; --json lists all.\n`)
      if (ranked.length === 0) input.io.out('  There are no springs in the tray.\n')
    }
    return counts['as-specified'] + counts.acceptable > 0 ? 0 : 1
  },
}
