import type { Say } from '../../../say.js';

type Text = { text: string };

/** What the bedside says of it; the rest is in `../equipment.ts` and comes later. */
export const equipment = {
  link: 'Equipment',
  good: (f: { due: string; day: string }) => `In order; next: ${f.due}, by ${f.day}`,
  due: (f: Text) => `Check due: ${f.text}`,
  failed: (f: Text) => `Out of use: ${f.text} failed`,
  checkGood: (f: { last: string; due: string }) => `good on ${f.last}, holds to ${f.due}`,
  checkOverdue: (f: { last: string; due: string }) => `overdue since ${f.due}, last good on ${f.last}`,
  checkDisturbed: (f: { last: string }) => `due again: dropped since it was good on ${f.last}`,
  checkNever: 'not yet done',
  checkFailed: 'failed, and not good since',
  endedOn: (f: Text) => `here no more since ${f.text}`,
  readHigh: (f: { byMmHg: number; atMmHg: number }, say: Say) =>
    `${say.short(f.byMmHg, 1)} mmHg too high at ${say.short(f.atMmHg)}`,
  readLow: (f: { byMmHg: number; atMmHg: number }, say: Say) =>
    `${say.short(f.byMmHg, 1)} mmHg too low at ${say.short(f.atMmHg)}`,
  readRight: 'no difference found',
  loses: (f: { perMinute: number }, say: Say) => `loses ${say.short(f.perMinute, 1)} mmHg a minute`,
  resultGood: 'Good',
  resultFailed: 'Failed',
  resultIncomplete: 'Too little was read to call it good',
  resultNone: 'Every check is due again',
  which: 'Gauge',
  notSaid: 'not said',
  choiceFailed: (f: { name: string }) => `${f.name}, out of use`,
  choiceDue: (f: { name: string }) => `${f.name}, check due`,
  whichIs: (f: Text) => `gauge: ${f.text}`,
  beware: (f: { name: string; text: string }) => `${f.name} — ${f.text}`,
  bewareFailed: 'Take another gauge: what this one shows may be wrong.',
  bewareDue: 'It may be used, by your local protocol; the reading keeps which gauge it was.',
} as const;
