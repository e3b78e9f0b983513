import type { Say } from '../say.js';

type Ends = { readonly low: number; readonly high: number };

/** What is said of a pressure, of the run that gave it, and of a cuff. mmHg, mmHg/s and cm. */
export const runLines = {
  systolic: 'Systolic',
  diastolic: 'Diastolic',
  muffled: 'Muffled',
  byFeel: 'by feel',
  none: 'none',
  cannotBeUsed: (f: { mmHg: number }, say: Say) => `${say.short(f.mmHg)}, which cannot be used`,
  usedInPlace: (f: { used: number; heard: number }, say: Say) =>
    `${say.short(f.used)} is used (the last sound was at ${say.short(f.heard)})`,
  rangeAlone: (f: Ends, say: Say) =>
    `range from deflation and gauge alone ${say.around(f.low, f.high).join(' to ')}`,
  scatter: (f: { mmHg: number }, say: Say) =>
    `Readings of one person minutes apart scatter with an SD of about ${say.short(f.mmHg)} mmHg.`,
  deflation: 'Let down',
  early: (f: { rate: number }, say: Say) => `${say.short(f.rate)} mmHg a second at first`,
  mean: (f: { rate: number }, say: Say) => `${say.short(f.rate)} on the whole`,
  perBeat: (f: { mmHg: number }, say: Say) => `${say.short(f.mmHg)} a beat`,
  felt: 'By feel, before listening',
  feltLost: (f: { mmHg: number }, say: Say) => `pulse lost at ${say.short(f.mmHg)} while pumping up`,
  feltBack: (f: { mmHg: number }, say: Say) => `back at ${say.short(f.mmHg)} on the way down`,
  pumpedTo: (f: { mmHg: number; above: string | null }, say: Say) =>
    f.above === null ? `to ${say.short(f.mmHg)}` : `to ${say.short(f.mmHg)}: ${f.above}`,
  notWritten: 'how high was not written down',
  notTimed: 'how fast was not timed',
  margin: 'Pumped up',
  marginAbove: (f: { mmHg: number }, say: Say) =>
    f.mmHg < 0
      ? `to ${say.short(-f.mmHg)} mmHg below the loss of the pulse`
      : `${say.short(f.mmHg)} mmHg above the loss of the pulse`,
  gap: 'Gap',
  gapBetween: (f: { from: number; to: number }, say: Say) => `${say.short(f.from)} to ${say.short(f.to)}`,
  meanOf: (f: { readings: number }, say: Say) => `a mean of ${say.short(f.readings)} readings`,
  writtenOnly: 'From written numbers alone no rate, range or margin can be told.',
  cuff: 'Cuff',
  noCuff: 'none of this scheme',
  bladder: (f: { width: number; length: number }, say: Say) =>
    `bladder ${say.short(f.width)} x ${say.short(f.length)} cm`,
  smallestBladder: (f: { width: number; length: number }, say: Say) =>
    `an arm like this needs a bladder of at least ${say.short(f.width)} x ${say.short(f.length)} cm`,
  scheme: 'By',
  bias: 'Cuff size',
  biasOf: (f: { systolic: number; diastolic: number }, say: Say) =>
    f.systolic === 0 && f.diastolic === 0
      ? 'fits: no error is expected of it'
      : `expected to shift the reading by ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg on average; the reading stands as it was taken`,
  biasSpan: (
    f: { systolicLow: number; systolicHigh: number; diastolicLow: number; diastolicHigh: number },
    say: Say,
  ) =>
    `over many studies systolic ${signed(f.systolicLow, say)} to ${signed(f.systolicHigh, say)}, diastolic ${signed(f.diastolicLow, say)} to ${signed(f.diastolicHigh, say)} mmHg`,
} as const;

function signed(value: number, say: Say): string {
  if (value === 0) return '0';
  return `${value > 0 ? '+' : '−'}${say.short(Math.abs(value), 2)}`;
}
