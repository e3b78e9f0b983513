import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { anyHistoryTwice } from '../testing/history.js';
import { at, countContent, frame, idOf, kept } from '../testing/work.js';
import { inOrder } from './inOrder.js';

const CONTENT = countContent({ n: 19, windowSeconds: 15 });

/** A counted pulse with an id that says where it should stand. */
function pulse(place: number, minute: number, more: Partial<EntryFrame> = {}): StoredEntry {
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  return kept(frame('count', CONTENT, { id: idOf(place), sequence: place, measuredAt, ...more }));
}

const placesOf = (entries: readonly StoredEntry[]) =>
  inOrder(entries).map(({ id }) => Number.parseInt(id.slice(-4), 16));

describe('the order of the work', () => {
  test('goes by the sequence of the device within a round, whatever its clock says (conventions 8)', () => {
    const round = idOf(500);
    // The clock was put back by an hour between the second and the third value.
    const jumped = [
      pulse(1, 60, { round }),
      pulse(2, 62, { round }),
      pulse(3, 3, { round }),
      pulse(4, 5, { round }),
    ];
    expect(placesOf(jumped.toReversed())).toEqual([1, 2, 3, 4]);
  });

  test('goes by when each round began, and by instants: one in another zone is not put behind', () => {
    const late = { at: '2026-11-25T19:30:00+05:30', zone: 'Asia/Kolkata', asEntered: null }; // 14:00 UTC
    const early = { at: '2026-11-25T11:30:00-03:30', zone: 'America/St_Johns', asEntered: null }; // 15:00 UTC
    const entries = [pulse(2, 0, { measuredAt: early }), pulse(1, 0, { measuredAt: late })];
    expect(placesOf(entries)).toEqual([1, 2]);
  });

  test('keeps the values of two devices in one round apart, the first to begin first', () => {
    const [round, one, other] = [idOf(500), idOf(701), idOf(702)];
    const entries = [
      pulse(3, 2, { round, device: other, sequence: 1 }),
      pulse(1, 0, { round, device: one, sequence: 8 }),
      pulse(4, 3, { round, device: other, sequence: 2 }),
      pulse(2, 5, { round, device: one, sequence: 9 }),
    ];
    expect(placesOf(entries)).toEqual([1, 2, 3, 4]);
  });

  test('falls back on ids, so that nothing depends on the order of arrival', () => {
    const same = { sequence: 1, round: idOf(500) };
    expect(placesOf([pulse(2, 0, same), pulse(1, 0, same)])).toEqual([1, 2]);
  });

  test('is the same for any order of arrival, loses nothing, and leaves its input alone', () => {
    fc.assert(
      fc.property(anyHistoryTwice, ([entries, shuffled]) => {
        const before = [...shuffled];
        expect(inOrder(shuffled)).toEqual(inOrder(entries));
        expect(shuffled).toEqual(before);
        expect(new Set(inOrder(shuffled))).toEqual(new Set(shuffled));
      }),
    );
  });

  test('never goes against a sequence within a round on one device', () => {
    fc.assert(
      fc.property(anyHistoryTwice, ([, shuffled]) => {
        const seen = new Map<string, number>();
        for (const { id, round, device, sequence } of inOrder(shuffled)) {
          const key = `${round ?? id} ${device}`;
          expect(sequence).toBeGreaterThanOrEqual(seen.get(key) ?? 0);
          seen.set(key, sequence);
        }
      }),
    );
  });
});
