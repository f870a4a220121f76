import type { EntryReading } from '../../core/exchange/library-file.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { blankEntry } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'

/** A caliber read from what is printed for its fields; of several readings the first is chosen unless one says so. */
export const caliberPrinted = (
  fields: Readonly<Record<string, string | readonly (string | EntryReading)[]>>,
  name: { readonly maker: string; readonly designation: string } = { maker: 'Verrin', designation: '1' },
): Caliber =>
  readEntry({
    ...blankEntry(),
    ...name,
    fields: Object.fromEntries(
      Object.entries(fields).map(([key, readings]) => [
        key,
        (typeof readings === 'string' ? [readings] : readings).map((reading) =>
          typeof reading === 'string' ? { printed: reading } : { ...reading },
        ),
      ]),
    ),
  }).caliber

/** A watch whose train, motion work, barrel and spring agree, as printed. */
export const soundWatch = {
  secondsDisplay: 'small seconds',
  beatRateVph: '18 000',
  barrelTeeth: '84',
  centrePinion: '14',
  centreWheel: '80',
  thirdPinion: '10',
  thirdWheel: '75',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
  cannonPinion: '12',
  minuteWheel: '36',
  minutePinion: '10',
  hourWheel: '40',
  barrelInsideMm: '16,0',
  barrelDepthMm: '2,60',
  barrelArborMm: '5,0',
  springHeightMm: '2,50',
  springThicknessMm: '0,18',
  springLengthMm: '480',
  goingHours: '40 h',
} as const
