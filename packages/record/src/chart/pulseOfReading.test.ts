import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { countContent, frame, idOf, kept, runContent } from '../testing/work.js';
import { projectChart } from './projectChart.js';
import { pulseOfReading } from './pulseOfReading.js';

const round = idOf(600);
const heard = (pulsePerMinute: number | null) =>
  runContent({
    method: 'auscultation',
    pulsePerMinute,
    moments: [
      { what: 'first sound', mmHg: 148 },
      { what: 'last sound', mmHg: 92 },
    ],
  });
const entry = (kind: 'count' | 'run', id: number, content: object, amends: number | null = null) =>
  kept(
    frame(kind, content, {
      id: idOf(id),
      sequence: id,
      round,
      amends: amends === null ? null : { entry: idOf(amends), reason: 'typing-slip', text: null },
    }),
    id,
  );
const gone = (id: number, of: number) =>
  kept(
    frame(
      'entered-in-error',
      { note: null },
      { id: idOf(id), amends: { entry: idOf(of), reason: 'wrong-person', text: null } },
    ),
    id,
  );
/** The same, measured at a minute after nine. */
const minutes = (one: StoredEntry, minute: number) => ({
  ...one,
  measuredAt: { ...one.measuredAt, at: `2026-11-02T09:${String(minute).padStart(2, '0')}:00.000Z` },
});
const pulseIn = (entries: readonly StoredEntry[]) => {
  const [first] = projectChart(entries).rounds;
  const run = entries.find((one) => one.kind === 'run');
  if (first === undefined || run?.kind !== 'run') throw new Error('no reading');
  return pulseOfReading(run, first);
};

const pulse = entry('count', 1, countContent({ n: 38, windowSeconds: 30 }));
const reading = entry('run', 2, heard(76));

test('the pulse of a reading is the count of its round, or its own', () => {
  expect(pulseIn([pulse, reading])).toEqual({ perMinute: 76, was: null, isCounted: true });
  const own = entry('run', 2, heard(96));
  expect(pulseIn([pulse, own])).toEqual({ perMinute: 96, was: null, isCounted: false });
  expect(pulseIn([entry('run', 2, heard(null))])).toMatchObject({ perMinute: null, was: null });
});

// One pulse in two places is amended in both: a number that was put right is nowhere said as it was before.
test('a count that was amended or marked since is so beside the reading too, however often', () => {
  const once = entry('count', 3, countContent({ n: 83, windowSeconds: 60 }), 1);
  expect(pulseIn([pulse, reading, once])).toEqual({ perMinute: 83, was: 76, isCounted: true });
  const twice = entry('count', 4, countContent({ n: 40, windowSeconds: 30 }), 3);
  expect(pulseIn([pulse, reading, once, twice])).toMatchObject({ perMinute: 80, was: 76 });
  const back = entry('count', 4, countContent({ n: 76, windowSeconds: 60 }), 3);
  expect(pulseIn([pulse, reading, once, back])).toEqual({ perMinute: 76, was: null, isCounted: true });
  expect(pulseIn([pulse, reading, gone(5, 1)])).toEqual({ perMinute: null, was: 76, isCounted: true });
});

test('of two counts of one number it is the one nearest in time, and the other one amended changes nothing of it', () => {
  const count = (id: number, minute: number) =>
    minutes(entry('count', id, countContent({ n: 38, windowSeconds: 30 })), minute);
  const amended = minutes(entry('count', 4, countContent({ n: 60, windowSeconds: 30 }), 1), 30);
  const own = minutes(reading, 11);
  expect(pulseIn([count(1, 10), own, count(3, 20), amended])).toMatchObject({ perMinute: 120, was: 76 });
  expect(pulseIn([count(1, 1), own, count(3, 12), amended])).toMatchObject({ perMinute: 76, was: null });
});

test('a count that was entered in error takes no pulse from a reading where another of that number stands', () => {
  const first = minutes(pulse, 8);
  const again = minutes(entry('count', 3, countContent({ n: 38, windowSeconds: 30 })), 10);
  const own = minutes(reading, 11);
  const standing = { perMinute: 76, was: null, isCounted: true };
  expect(pulseIn([first, own, again, gone(5, 3)])).toEqual(standing);
  expect(pulseIn([first, own, again, gone(5, 1)])).toEqual(standing);
  expect(pulseIn([first, own, again, gone(5, 1), gone(6, 3)])).toMatchObject({ perMinute: null, was: 76 });
});
