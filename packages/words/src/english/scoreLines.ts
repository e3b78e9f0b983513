import type { Say } from '../say.js';

/** What is said of a score, a derived value and a standing test. */
export const scoreLines = {
  total: (f: { total: number; band: string }, say: Say) => `${say.number(f.total)}, ${f.band}`,
  atLeast: (f: { atLeast: number }, say: Say) => `at least ${say.number(f.atLeast)}, no total`,
  noTotal: 'no total',
  noValue: 'no value',
  part: (f: { part: string; points: number }, say: Say) => `${f.part} ${say.number(f.points)}`,
  parts: 'Parts',
  missing: 'Missing',
  alert: 'Alert',
  checks: 'Checks',
  formFactor: (f: { mmHg: number }, say: Say) => `${say.number(f.mmHg)} mmHg by the form factor of 0.4`,
  rateCorrected: (f: { mmHg: number }, say: Say) => `${say.number(f.mmHg)} mmHg corrected for the rate`,
  fell: 'Fall',
  fellWithin: 'a fall on standing by the usual limits',
  fellLater: 'a delayed fall on standing by the usual limits',
  fellNot: 'no fall to the limits in the readings taken',
  fellUnknown: 'a fall on standing is not excluded',
  atMinutes: (f: { minutes: number }, say: Say) => `at ${say.short(f.minutes)} min`,
  systolicFell: (f: { mmHg: number }, say: Say) => `systolic ${changed(-f.mmHg, say)}`,
  diastolicFell: (f: { mmHg: number }, say: Say) => `diastolic ${changed(-f.mmHg, say)}`,
  pulseRose: (f: { perMinute: number }, say: Say) => `pulse ${changed(f.perMinute, say)}`,
  ratio: 'Pulse for each mmHg',
  ratioOf: (f: { ratio: number; limit: number }, say: Say) =>
    `${say.beside(f.ratio, f.limit, 2)} a minute for each mmHg of fall (limit ${say.limit(f.limit)})`,
} as const;

/** A change with its sign. */
function changed(by: number, say: Say): string {
  return by > 0 ? `+${say.short(by)}` : say.short(by);
}
