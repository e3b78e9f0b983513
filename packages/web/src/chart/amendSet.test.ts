import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { besideInSet, isSetAsked } from './amendSet.js';

const entry = (id: string, kind: string, round: string, amends: string | null = null) =>
  ({
    id,
    kind,
    round,
    sequence: Number(id),
    measuredAt: { at: `2026-11-25T09:0${id}:00Z` },
    writtenAt: `2026-11-25T09:0${id}:00Z`,
    recordedAt: `2026-11-25T09:0${id}:00Z`,
    amends: amends === null ? null : { entry: amends, reason: 'wrong-person', text: null },
    content: { signs: [], evidence: { count: { of: 'pulse' } } },
  }) as unknown as StoredEntry;

const [pulse, run, other] = [
  entry('1', 'count', 'a'),
  entry('2', 'run', 'a'),
  entry('4', 'run', 'b'),
] as const;
const all = [pulse, run, entry('3', 'round', 'a'), other];
const ids = (value: StoredEntry, more: readonly StoredEntry[] = []) =>
  besideInSet([...all, ...more], value).map(({ id }) => id);

test('what was taken in one round is beside each other; another round and what is out already is not', () => {
  expect(ids(run)).toEqual(['1']);
  expect(ids(pulse)).toEqual(['2']);
  expect(ids(other)).toEqual([]);
  expect(ids(run, [entry('5', 'entered-in-error', 'a', '1')])).toEqual([]);
  expect(ids(run, [entry('5', 'count', 'a', '1')])).toEqual(['5']);
});

// A pulse of somebody else that is left in a chart is read as this person's newest one.
test('the rest of a set is asked about where the person was the wrong one, and for no other reason', () => {
  expect(isSetAsked({ what: 'in-error', reason: 'wrong-person' }, [pulse])).toBe(true);
  expect(isSetAsked({ what: 'in-error', reason: 'wrong-person' }, [])).toBe(false);
  expect(isSetAsked({ what: 'in-error', reason: 'duplicate' }, [pulse])).toBe(false);
  expect(isSetAsked({ what: 'numbers', reason: 'wrong-person' }, [pulse])).toBe(false);
});
