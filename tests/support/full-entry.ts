import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { entryOf } from './temporary-library.ts'

/** Verrin 17-220 with every kind of thing that an entry may hold, keys of a newer version among them. */
export const fullEntry = (): CaliberEntry => ({
  ...entryOf('Verrin', '17-220'),
  fields: {
    diameterMm: [{ printed: "17'''" }],
    springLengthMm: [
      { printed: '480', source: 'hb1', page: '44', chosen: true },
      { printed: '500', source: 'hb2', note: 'later edition', later: { kept: 1 } },
    ],
    beatRateVph: [{ printed: '18 000' }],
    someLaterField: [{ printed: '7' }],
  },
  jewels: [{ place: 'balance', kind: 'hole', count: 2, source: 'hb1', later: true }],
  depths: [{ driver: 'barrel', driven: 'centre', driverPitchMm: '1,2' }],
  parts: [{ part: 'mainspring', number: '1202' }],
  stripOrder: [{ part: 'balance cock', after: ['dial'], caution: 'mind the spring' }],
  overrules: [
    { proof: 'jewels-add-up', severity: 'accepted', reason: 'Two caps added.', of: 'disagrees', later: 'kept' },
    { proof: 'some-later-proof', severity: 'wrong', reason: 'Seen on the bench.', of: 'agrees' },
  ],
  later: { deep: ['yes'] },
})
