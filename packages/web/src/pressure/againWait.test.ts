import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { againSeconds, againText } from './againWait.js';
import { type DraftRun, NO_PRESSURE } from './pressureDraft.js';

const keptAt = { session: 's', atMs: 10_000 };
const after = { ...NO_PRESSURE, values: [{ keptAt } as DraftRun] };
const now = (seconds: number) => ({ session: 's', atMs: 10_000 + 1000 * seconds });

test('the next reading at one place has one wait, counted from the last one', () => {
  const next = { step: 'repeat', waitSeconds: 300 } as const;
  expect(againSeconds(after, next, now(0))).toBe(300);
  expect(againSeconds(after, next, now(299.5))).toBe(1);
  expect(againSeconds(after, next, now(400))).toBe(0);
  expect(againSeconds(after, next, { session: 'another', atMs: 0 })).toBeNull();
  expect(againSeconds(after, { step: 'other-arm', waitSeconds: null }, now(0))).toBe(0);
  expect(againSeconds(NO_PRESSURE, next, now(0))).toBe(0);
});

test('a rest of the person is read as a clock, that of the arm in seconds', () => {
  const words = wordsFor('en');
  expect(againText(272, 60, words)).toBe('The person rests: the next reading in 4:32 min.');
  expect(againText(42, 60, words)).toBe('The next reading in 42 seconds.');
});
