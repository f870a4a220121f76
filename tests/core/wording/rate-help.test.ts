import { expect, it } from 'vitest'
import { amplitudeHelp } from '../../../core/bench/amplitude-help.ts'
import { balanceHelp, changesAgainst } from '../../../core/bench/balance-help.ts'
import { rateWorking } from '../../../core/bench/rate-working.ts'
import {
  amplitudeSentence,
  balanceSentence,
  changeSentence,
  rateFormNames,
  wrongLiftSentence,
} from '../../../core/wording/rate-help.ts'

const reading = { liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12 }
const plain = (text: string) => text.replaceAll('\u202f', ' ')

it('says how low the usual formula reads, and what the swing is', () => {
  expect(amplitudeSentence(amplitudeHelp(reading))).toBe(
    'The usual formula reads 0.41° low. The whole swing is 552.6°, of which the balance is free of the fork for 500.6°.',
  )
  expect(amplitudeSentence(amplitudeHelp({ ...reading, liftTimeMs: 9 }))).toMatch(/would knock: check lift angle/)
})

it('says what one degree does', () => {
  expect(wrongLiftSentence(270, 52)).toBe('One degree wrong in 52 shifts every amplitude by 1.9 %: 5.2° at 270°.')
})

it('says what was found of balance and hairspring', () => {
  const said = (known: object) => {
    const help = balanceHelp({ beatRateVph: 18000, ...known })
    return help && plain(balanceSentence(help))
  }
  expect(said({ inertiaMgCm2: 16 })).toBe('The hairspring must have 0.3948 µN·m a radian for this rate.')
  expect(said({ stiffnessMicroNm: 0.4 })).toBe('The balance must have 16.21 mg·cm² for this rate.')
  expect(said({ inertiaMgCm2: 16, stiffnessMicroNm: 0.4 })).toBe(
    'Balance and hairspring together beat 18 118.5 an hour, 568.9 s a day faster than stated.',
  )
  expect(said({ inertiaMgCm2: 16.5, stiffnessMicroNm: 0.4 })).toMatch(/s a day slower than stated\.$/)
  expect(said({ inertiaMgCm2: 16, stiffnessMicroNm: 0.39478418 })).toMatch(/18 000 an hour, the stated rate\.$/)
})

it('says by how much a part must change', () => {
  expect(changesAgainst(45).map(changeSentence)).toEqual([
    '0.104 % more inertia of the balance',
    '0.104 % less stiffness of the hairspring',
    '0.104 % more active length of the hairspring',
  ])
})

it('has a name for every form of the rate', () => {
  for (const { form } of rateWorking(18000)) expect(rateFormNames[form]).not.toBe('')
})
