import type { Posture } from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { anyHistoryTwice } from '../testing/history.js';
import {
  at,
  countContent,
  frame,
  idOf,
  kept,
  runContent,
  signingContent,
  tapsContent,
  USUAL_PLACE,
} from '../testing/work.js';
import { chartedPerMinute } from './chartedPerMinute.js';
import { projectLatest } from './latest.js';
import { projectChart } from './projectChart.js';

/** A count at a minute of the day, of so many in a full minute. */
function counted(id: number, n: number, minute: number, more: Partial<EntryFrame> = {}, of = 'pulse') {
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const content = countContent({ n, windowSeconds: 60, of });
  return kept(frame('count', content, { id: idOf(id), sequence: id, measuredAt, ...more }), minute);
}

function amending(of: number) {
  return { amends: { entry: idOf(of), reason: 'typing-slip' as const, text: null } };
}

const gone = (id: number, of: number, minute: number): StoredEntry =>
  kept(frame('entered-in-error', { note: null }, { id: idOf(id), sequence: id, ...amending(of) }), minute);

const NOTHING_TO_DO = {
  pressure: null,
  actNow: 0,
  actNowFirst: null,
  recheck: null,
  toCountersign: 0,
  diary: null,
  diaries: [],
  awayUntil: null,
};
const SIGNED = { contested: false, preliminary: false, others: [] };

describe('the newest value of each sign', () => {
  test('is none for somebody of whom nothing was charted', () => {
    expect(projectLatest([])).toEqual({ pulse: null, breaths: null, ...NOTHING_TO_DO });
  });

  test('is the newest of its own sign', () => {
    const entries = [
      counted(1, 76, 0),
      counted(2, 16, 1, {}, 'breaths'),
      counted(3, 80, 60),
      counted(4, 72, 30),
    ];
    expect(projectLatest(entries)).toEqual({
      pulse: { entry: idOf(3), perMinute: 80, byHand: false, measuredAt: at(60), ...SIGNED },
      breaths: { entry: idOf(2), perMinute: 16, byHand: false, measuredAt: at(1), ...SIGNED },
      ...NOTHING_TO_DO,
    });
  });

  test('is the last taken of two in one round, whatever the clock said', () => {
    const round = idOf(500);
    const entries = [counted(1, 76, 60, { round }), counted(2, 80, 3, { round })];
    expect(projectLatest(entries).pulse?.entry).toBe(idOf(2));
  });

  test('goes by the time that an amendment gave it, and moves no other sign and no round', () => {
    const [first, second] = [idOf(501), idOf(502)];
    const entries = [
      counted(1, 70, 0, { round: first }),
      counted(2, 15, 1, { round: first }, 'breaths'),
      counted(3, 90, 60, { round: second }),
      counted(4, 19, 61, { round: second }, 'breaths'),
    ];
    const before = { at: '1990-01-01T10:00:00Z', zone: 'UTC', asEntered: null };
    const moved = counted(5, 90, 120, { ...amending(3), round: second, measuredAt: before });
    const latest = projectLatest([...entries, moved]);
    expect(latest.pulse).toMatchObject({ entry: idOf(1), perMinute: 70 });
    expect(latest.breaths).toMatchObject({ entry: idOf(4), perMinute: 19 });
    expect(projectChart([...entries, moved]).rounds.map(({ id }) => id)).toEqual([second, first]);
  });

  test('is what an amendment made of it, at the time at which it was measured', () => {
    const { measuredAt } = counted(1, 132, 0);
    const entries = [counted(1, 132, 0), counted(2, 123, 900, { ...amending(1), measuredAt })];
    expect(projectLatest(entries).pulse).toMatchObject({
      entry: idOf(2),
      perMinute: 123,
      measuredAt: at(0),
      contested: false,
    });
  });

  test('says so when amendments disagree', () => {
    const entries = [counted(1, 132, 0), counted(2, 123, 5, amending(1)), counted(3, 122, 6, amending(1))];
    expect(projectLatest(entries).pulse).toMatchObject({
      entry: idOf(3),
      perMinute: 122,
      contested: true,
      others: [123],
    });
  });

  test('is an older one when the newest was entered in error', () => {
    expect(projectLatest([counted(1, 76, 0), counted(2, 120, 60), gone(3, 2, 61)]).pulse?.perMinute).toBe(76);
    expect(projectLatest([counted(1, 76, 0), gone(2, 1, 1)]).pulse).toBeNull();
  });

  test('is not hidden by one that has no rate; and a rate of zero is one', () => {
    const interrupted = { reason: 'called-away', atSeconds: 12 };
    const broken = kept(
      frame('count', countContent({ windowSeconds: 30, interrupted }), { id: idOf(2), sequence: 2 }),
      5,
    );
    expect(projectLatest([broken]).pulse).toBeNull();
    expect(projectLatest([counted(1, 76, 0), broken]).pulse).toMatchObject({ entry: idOf(1), perMinute: 76 });
    const none = counted(3, 0, 9, {}, 'breaths');
    expect(projectLatest([none]).breaths).toMatchObject({ perMinute: 0 });
  });

  test('does not depend on the order in which entries come', () => {
    fc.assert(
      fc.property(anyHistoryTwice, ([entries, shuffled]) => {
        expect(projectLatest(shuffled)).toEqual(projectLatest(entries));
      }),
    );
  });
});

describe('the newest pressure', () => {
  const round = idOf(600);
  const run = (
    id: number,
    systolic: number,
    diastolic: number,
    { posture = 'sit', ...more }: Partial<EntryFrame> & { posture?: Posture } = {},
  ) => {
    const moments = [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: diastolic },
    ];
    const content = runContent({ method: 'auscultation', moments }, { place: { ...USUAL_PLACE, posture } });
    return kept(frame('run', content, { id: idOf(id), sequence: id, round, ...more }), id);
  };
  const signed = (...runs: StoredEntry[]) => {
    const content = signingContent([{ sign: 'pressure', entries: runs.map(({ id }) => id) }], runs);
    return [...runs, kept(frame('round', content, { id: idOf(90), sequence: 90, round, schema: 2 }), 90)];
  };

  // A pressure on the feet is no resting one: a list that shows it says so (bedside handbook 3.14).
  test('says how the person was placed for it, of an average that of its readings', () => {
    const stood = { posture: 'stand' } as const;
    expect(projectLatest([run(1, 130, 80, stood)]).pressure).toMatchObject({
      systolic: 130,
      posture: 'stand',
    });
    const rested = [run(1, 152, 94), run(2, 146, 90), run(3, 145, 88)];
    expect(projectLatest(signed(...rested, run(4, 118, 76, stood))).pressure).toMatchObject({
      average: { readings: 2 },
      posture: 'sit',
    });
  });

  // Without a protocol: ESC 2024, mean of the second and third (bedside handbook 3.10).
  test('has the average of its round beside it, and by how many readings', () => {
    const pressure = projectLatest(signed(run(1, 152, 94), run(2, 146, 90), run(3, 145, 88))).pressure;
    expect(pressure).toMatchObject({ systolic: 145, diastolic: 88 });
    expect(pressure?.average).toEqual({
      systolic: 145.5,
      diastolic: 89,
      readings: 2,
      used: [idOf(2), idOf(3)],
      shown: { systolic: null, diastolic: null },
    });
  });

  test('has none where the round comes to none, or where amendments of it disagree', () => {
    expect(projectLatest(signed(run(1, 152, 94), run(2, 146, 90))).pressure?.average).toBeNull();
    expect(projectLatest([run(1, 152, 94)]).pressure?.average).toBeNull();
    const three = signed(run(1, 152, 94), run(2, 146, 90), run(3, 145, 88));
    const amended = run(10, 164, 88, amending(3));
    expect(projectLatest([...three, amended]).pressure?.average).toMatchObject({ systolic: 155 });
    const disputed = [...three, amended, run(11, 154, 88, amending(3))];
    expect(projectLatest(disputed).pressure).toMatchObject({ contested: true, average: null });
  });
});

describe('the rate an entry stands for', () => {
  test('is the one set by hand, with the computed one beside it', () => {
    const content = { ...tapsContent([0, 0.8, 1.6]), override: { perMinute: 90, reason: 'two taps missed' } };
    const entry = kept(frame('taps', content));
    expect(chartedPerMinute(entry)).toBe(90);
    expect(projectLatest([entry]).pulse).toMatchObject({ perMinute: 90, byHand: true });
    // 60 (beats - 1) / (last - first), conventions 5: two intervals of 0.8 s.
    expect(content.value.perMinute).toBeCloseTo(75, 9);
  });

  test('is none for what is no value', () => {
    expect(chartedPerMinute(kept(frame('entered-in-error', { note: null })))).toBeNull();
  });
});
