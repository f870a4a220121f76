import { listed } from '../listed.ts'
import { detail, type Judged, openBarrel, type Sentences, stated } from './judged.ts'

const makerFirst = 'The maker’s own specification comes first.'

const placesOf = (judgement: Judged) => listed(detail(judgement, 'places').split('; '))

/** What the proofs of the work at the bench find: taking down and oiling. */
export const workFindings: Sentences = {
  'strip-sound': (j) =>
    `The ${stated(j)} steps of taking down can be followed one after the other` +
    `${j.details?.asListed === 'no' ? ', though not as they are listed: the working gives an order that can' : ''}. ` +
    'The maker’s own order comes first.',
  'strip-loop': (j) =>
    j.details?.parts === 1
      ? `The step “${detail(j, 'part')}” is said to come after itself. Correct what it comes after.`
      : `Taking down cannot be put into an order, for each of these must come off before the next: ${detail(j, 'loop')}. ` +
        'Correct what one of them comes after.',
  'strip-not-let-down': (j) =>
    `Nothing says to let the mainspring down before the step “${detail(j, 'part')}”. Put it first, or into the caution of ` +
    `that step. ${openBarrel}`,
  'strip-twice': (j) => `Two steps of taking down are for “${detail(j, 'part')}”. Join them, or name the parts apart.`,
  'strip-loose-end': (j) =>
    `The step “${detail(j, 'part')}” comes after “${detail(j, 'after')}”, which has no step of its own` +
    `${Number(j.details?.more ?? 0) > 0 ? ` (and ${detail(j, 'more')} more like it)` : ''}. Add the step, or name the part as its step does.`,
  'oiling-complete': (j) =>
    `All ${stated(j)} places that are usually oiled stand in the list, and what usually stays dry is not oiled. ${makerFirst}`,
  'oiling-harms': (j) =>
    `Oil is listed for what must stay dry: ${placesOf(j)}. It makes coils stick together and teeth drag. Look the instruction ` +
    `up again. ${makerFirst}`,
  'oiling-left-dry': (j) =>
    `Marked as dry where oil or grease is usual: ${placesOf(j)}. Dry pivots wear. Look the instruction up again. ${makerFirst}`,
  'oiling-left-out': (j) =>
    `Not in the list of oiling: ${placesOf(j)}. Add what is oiled there, or mark the place as dry. ${makerFirst}`,
  'oiling-unusual': (j) =>
    `Oil is listed where most makers leave dry: ${placesOf(j)}. Some do put a trace there; see that it is meant. ${makerFirst}`,
}
