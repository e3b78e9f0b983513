import { UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { chartCount, type EntryFrame, NOTHING_CHOSEN } from '@evenfall/record';
import { describe, expect, test } from 'vitest';
import { readEntries, readOne } from './readEntries.js';

const NOW = new Date('2026-11-25T10:00:00Z');
const ID = '01950000-0000-7000-8000-000000000001';

function pulse(more: Partial<EntryFrame> = {}): EntryFrame {
  const done = {
    count: { of: 'pulse', n: 19, windowSeconds: 15, clock: 'any', first: 1 },
    circumstances: UNKNOWN_CIRCUMSTANCES,
    override: null,
    note: null,
  } as const;
  return {
    frame: 1,
    id: ID,
    book: 'care',
    kind: 'count',
    schema: 2,
    person: ID,
    round: ID,
    session: null,
    agent: ID,
    role: 'observer',
    device: ID,
    sequence: 1,
    measuredAt: { at: '2026-11-25T09:00:00Z', zone: 'UTC', asEntered: null },
    writtenAt: '2026-11-25T09:01:00Z',
    amends: null,
    content: chartCount(done, NOTHING_CHOSEN, 'evenfall test'),
    ...more,
  };
}

const at = (text: string) => ({ measuredAt: { at: text, zone: 'UTC', asEntered: null } });

describe('entries read from a request', () => {
  test('are given with what was sent beside what was read', () => {
    const frame = pulse();
    expect(readEntries([frame], NOW)).toEqual({
      entries: [{ frame, entry: frame, cameAt: NOW.toISOString() }],
      refusals: [],
    });
  });

  test.each(['person', 'identity-corrected', 'identity-erased'] as const)(
    'of kind %s are refused, since an identity comes with them by another way',
    (kind) => {
      expect(readEntries([pulse(), pulse({ kind })], NOW).refusals).toMatchObject([
        { field: '/entries/1/kind', expected: 'kind-with-own-route', got: kind },
      ]);
    },
  );

  test('are refused together, each below its own place', () => {
    const bad = pulse({ schema: 3 });
    const worse = pulse({ content: {} });
    const { entries, refusals } = readEntries([bad, pulse(), worse], NOW);
    expect(entries).toHaveLength(1);
    expect(refusals.map(({ field }) => field)).toEqual([
      '/entries/0/schema',
      '/entries/2/content/evidence',
      '/entries/2/content/value',
      '/entries/2/content/override',
      '/entries/2/content/computedBy',
      '/entries/2/content/note',
    ]);
  });

  // 24 h is a decision of this project: a wrong date is caught, another zone is not.
  test('may be measured a day ahead of the clock and not a second more', () => {
    expect(readOne(pulse(at('2026-11-26T10:00:00Z')), NOW, '/entry').refusals).toEqual([]);
    expect(readOne(pulse(at('2026-11-26T10:00:01Z')), NOW, '/entry').refusals).toMatchObject([
      { field: '/entry/measuredAt/at', code: 'out-of-range', figures: { hoursAhead: 24 } },
    ]);
    expect(readOne(pulse(at('2026-11-26T23:59:59+14:00')), NOW, '/entry').refusals).toEqual([]);
  });

  test('may be as old as somebody remembers', () => {
    expect(readOne(pulse(at('1951-01-01T00:00:00Z')), NOW, '/entry').refusals).toEqual([]);
  });
});
