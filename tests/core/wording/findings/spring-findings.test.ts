import { expect, it } from 'vitest'
import { springFindings } from '../../../../core/wording/findings/spring-findings.ts'

const judgement = { unit: '', difference: 0, allowed: 0, working: [], outcome: 'disagrees' } as const

it('gives the share of the room that the spring takes', () => {
  expect(springFindings['fill-usual']?.({ ...judgement, reason: 'fill-usual', stated: null, found: 0.4877 })).toBe(
    'The spring takes 48.8 % of the free space, near the half that gives the most turns.',
  )
})

it('warns before a barrel is opened', () => {
  expect(
    springFindings['hours-short']?.({
      ...judgement,
      reason: 'hours-short',
      stated: 36,
      found: 34,
      difference: -2,
      details: { turns: 4.25, hoursPerTurn: 8 },
    }),
  ).toBe(
    '36 h of going is stated; 4.25 turns of the spring (theoretical) at 8 h a turn give 34 h, 2 h too few. Check the barrel teeth and centre pinion, the spring’s sizes and the stated hours. Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.',
  )
})

it('says what the length costs, and which thickness would suit it', () => {
  const details = { mostTurns: 7.8689, lostTurns: 0.5938, lostPercent: 7.546, suitingThicknessMm: 0.14544 }
  expect(
    springFindings['length-short']?.({
      ...judgement,
      reason: 'length-short',
      stated: 240,
      found: 349.066,
      difference: -109.066,
      details,
    }),
  ).toBe(
    'The spring is stated 240 mm long; 349.1 mm would give the most turns. It is 109.1 mm too short, which costs 0.59 of 7.87 turns (7.5 %). If the length is right, a strip of 0.145 mm would suit it. Measure length and thickness again. Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.',
  )
})

it('warns where the inner coil is bent too sharply', () => {
  expect(
    springFindings['bend-sharp']?.({
      ...judgement,
      reason: 'bend-sharp',
      stated: null,
      found: 18.75,
      details: { strainPercent: 5.063, usualFrom: 25, usualTo: 32, least: 20 },
    }),
  ).toBe(
    'The hub of the arbor is 18.8 times as thick as the spring, where watch practice is 25 to 32 (strain of a straight strip at its surface 5.1 %). Below 20 the inner coil may set or break. Check the thickness, and measure the arbor where the spring winds, not at its pivot. Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.',
  )
})
