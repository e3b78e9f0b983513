import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { saidOtherwise } from './saidOtherwise.js';

test('what a source said again as it was is no change to show; another value is, once', () => {
  const said = (id: string, perMinute: number, at = '2025-03-01T09:30:00Z') =>
    ({
      id,
      kind: 'reported',
      measuredAt: { at },
      content: { value: { of: 'pulse', perMinute } },
    }) as StoredEntry;
  const [first, wrong, back] = [said('a', 72), said('b', 27), said('c', 72)] as const;
  const mark = { ...first, id: 'd', kind: 'entered-in-error' } as unknown as StoredEntry;
  expect(saidOtherwise([first, back], [back])).toEqual([]);
  expect(saidOtherwise([first, wrong, back], [back])).toEqual([wrong]);
  // Taken back: the value stays readable, each once.
  expect(saidOtherwise([first, back, mark], [])).toEqual([first]);
  const moved = said('e', 72, '2025-03-01T09:40:00Z');
  expect(saidOtherwise([first, moved], [moved])).toEqual([first]);
});
