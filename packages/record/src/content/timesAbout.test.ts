import { expect, test } from 'vitest';
import { timesAbout } from './timesAbout.js';

test('a reading is about its time where the usual one of its sitting was taken for it, never where it was said or read', () => {
  const entered = (asEntered: string | null) => ({ at: { asEntered } });
  expect(timesAbout([entered('~07:00'), entered('07:00'), entered(null), entered('~21:30')])).toEqual(
    new Set([1, 4]),
  );
});
