import fc from 'fast-check';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import {
  at,
  countContent,
  frame,
  idOf,
  kept,
  roundContent,
  runContent,
  signContent,
  tapsContent,
} from './work.js';

const CONTENTS = {
  count: countContent({ n: 19, windowSeconds: 15 }),
  taps: tapsContent([0, 0.8, 1.6]),
  run: runContent({ method: 'palpation', moments: [{ what: 'pulse back', mmHg: 124 }] }),
  sign: signContent({ of: 'pain', score: 3, tool: 'numeric' }),
  round: roundContent(idOf(1)),
  'entered-in-error': { note: null },
} as const;

const step = fc.record({
  kind: fc.constantFrom('count', 'count', 'taps', 'run', 'sign', 'round', 'entered-in-error'),
  round: fc.option(fc.integer({ min: 0, max: 3 })),
  device: fc.integer({ min: 0, max: 1 }),
  sequence: fc.integer({ min: 0, max: 6 }),
  measuredMinute: fc.integer({ min: 0, max: 5 }),
  recordedMinute: fc.integer({ min: 0, max: 3 }),
  amends: fc.option(fc.nat(11), { freq: 1 }),
});

/**
 * Any history of one person, likely or not: clocks that jump, equal sequence numbers, amendments of amendments, of
 * what is not there, of themselves and in rings.
 */
export const anyHistory: fc.Arbitrary<StoredEntry[]> = fc.array(step, { maxLength: 12 }).map((steps) =>
  steps.map(({ kind, round, device, sequence, measuredMinute, recordedMinute, amends }, index) => {
    const more: Partial<EntryFrame> = {
      id: idOf(index + 1),
      round: round === null ? null : idOf(500 + round),
      device: idOf(700 + device),
      sequence,
      measuredAt: { at: at(measuredMinute), zone: 'UTC', asEntered: null },
      writtenAt: at(measuredMinute),
      amends: amends === null ? null : { entry: idOf(amends + 1), reason: 'typing-slip', text: null },
    };
    const name = kind as keyof typeof CONTENTS;
    return kept(frame(name, CONTENTS[name], more), recordedMinute);
  }),
);

/** A history and the same entries in another order. */
export const anyHistoryTwice = anyHistory.chain((entries) =>
  fc.tuple(
    fc.constant(entries),
    fc.shuffledSubarray(entries, { minLength: entries.length, maxLength: entries.length }),
  ),
);
