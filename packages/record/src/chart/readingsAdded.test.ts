import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { readingsAdded } from './readingsAdded.js';

const series = (id: string, readings: number, entry: string | null) =>
  ({
    id,
    kind: 'series',
    content: { readings: Array.from({ length: readings }) },
    amends: entry === null ? null : { entry },
  }) as unknown as StoredEntry;

test('of two that add to one series each says its own readings', () => {
  const [first, one, other] = [series('a', 12, null), series('b', 16, 'a'), series('c', 14, 'a')] as const;
  const story = [first, one, other];
  expect(story.map((entry) => readingsAdded(entry, story))).toEqual([null, 4, 2]);
});
