import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { at, frame, idOf, kept, runContent } from '../testing/work.js';
import { failedGauge } from './failedGauge.js';
import { readingsInDoubt, readingsWith } from './readingsWith.js';

const GAUGE = idOf(1);
const OTHER = idOf(2);

function read(id: number, minute: number, gauge: string | null, amends: number | null = null): StoredEntry {
  const content = runContent(
    {
      method: 'auscultation',
      moments: [
        { what: 'first sound', mmHg: 140 + id },
        { what: 'last sound', mmHg: 92 },
      ],
    },
    { gauge },
  );
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const more = { id: idOf(id), sequence: id, round: idOf(90), measuredAt };
  const reason = 'equipment-fault' as const;
  return kept(
    frame('run', content, {
      ...more,
      amends: amends === null ? null : { entry: idOf(amends), reason, text: null },
    }),
    100 + id,
  );
}
const writtenWith = (gauge: string, entries: readonly StoredEntry[]) =>
  readingsWith(gauge, entries).map(({ written }) => written);

test('are those that name it, in order of reading', () => {
  const entries = [read(12, 30, GAUGE), read(10, 10, GAUGE), read(11, 20, OTHER), read(13, 5, null)];
  expect(writtenWith(GAUGE, entries)).toEqual(['150/92', '152/92']);
  expect(readingsWith(GAUGE, entries)[0]).toEqual({
    entry: idOf(10),
    person: idOf(9001),
    round: idOf(90),
    measuredAt: at(10),
    written: '150/92',
  });
});

test('go with what stands: to another gauge where that was put right, and nowhere where one was an error', () => {
  const put = read(20, 10, OTHER, 10);
  expect(writtenWith(GAUGE, [read(10, 10, GAUGE), put])).toEqual([]);
  expect(writtenWith(OTHER, [read(10, 10, GAUGE), put])).toEqual(['160/92']);
  const amends = { entry: idOf(10), reason: 'wrong-person' as const, text: null };
  const mark = kept(frame('entered-in-error', { note: null }, { id: idOf(21), amends }), 200);
  expect(writtenWith(GAUGE, [read(10, 10, GAUGE), mark])).toEqual([]);
});

test('are in doubt after the last good check and before the repair, neither of the two instants included', () => {
  const readings = readingsWith(
    GAUGE,
    [10, 20, 30, 40, 50].map((minute) => read(minute, minute, GAUGE)),
  );
  const ms = (minute: number) => Date.parse(at(minute));
  const minutes = (afterMs: number | null, untilMs: number | null) =>
    readingsInDoubt(readings, { afterMs, untilMs }).map(({ measuredAt }) => measuredAt);
  expect(minutes(ms(20), ms(50))).toEqual([at(30), at(40)]);
  expect(minutes(null, ms(20))).toEqual([at(10)]);
  expect(minutes(ms(20), null)).toEqual([at(30), at(40), at(50)]);
});

// Bedside handbook 3.4: what was read from a gauge that failed is in doubt. Said beside the reading: our decision.
test('a reading says itself which gauge it was read from, where a check of that one failed', () => {
  const ms = (minute: number) => Date.parse(at(minute));
  const doubt = (of: 'comparison' | 'zero', after: number, until: number | null) => ({
    of,
    afterMs: ms(after),
    failedMs: ms(after + 5),
    untilMs: until === null ? null : ms(until),
  });
  const named = { what: 'gauge', name: 'Gauge 3', type: 'aneroid' } as never;
  const gauges = (...doubts: ReturnType<typeof doubt>[]) => [
    { id: GAUGE, named, standing: { state: 'usable' as never, checks: [], doubts } },
  ];
  const of = (minute: number, gauge: string | null, known: ReturnType<typeof gauges>) => {
    const entry = read(minute, minute, gauge);
    return entry.kind === 'run' ? failedGauge(entry, known) : null;
  };
  const failed = gauges(doubt('comparison', 10, null));
  expect(of(12, GAUGE, failed)).toEqual({ name: 'Gauge 3', checks: ['comparison'] });
  expect(of(10, GAUGE, failed)).toBeNull();
  expect(of(12, OTHER, failed)).toBeNull();
  expect(of(12, null, failed)).toBeNull();
  expect(of(12, GAUGE, gauges())).toBeNull();
  // Repaired since: what was read before stays in doubt, what was read after is not.
  const repaired = gauges(doubt('comparison', 10, 20), doubt('zero', 11, 20), doubt('zero', 10, 20));
  expect(of(15, GAUGE, repaired)).toEqual({ name: 'Gauge 3', checks: ['comparison', 'zero'] });
  expect(of(25, GAUGE, repaired)).toBeNull();
});
