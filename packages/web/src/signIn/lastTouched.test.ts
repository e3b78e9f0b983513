import { expect, test } from 'vitest';
import { lastTouched, noteTouched } from './lastTouched.js';

test('one page finds when another was touched, and what is no time is not known', () => {
  const texts: Record<string, string> = {};
  const shelf = {
    getItem: (key: string) => texts[key] ?? null,
    setItem: (key: string, text: string) => {
      texts[key] = text;
    },
  };
  expect(lastTouched(shelf)).toBeNull();
  noteTouched(shelf, 1_700_000_000_000);
  expect(lastTouched(shelf)).toBe(1_700_000_000_000);
  for (const key of Object.keys(texts)) texts[key] = 'yesterday';
  expect(lastTouched(shelf)).toBeNull();
  const refusing = {
    getItem: () => {
      throw new Error('refused');
    },
    setItem: () => {
      throw new Error('refused');
    },
  };
  noteTouched(refusing, 1);
  expect([lastTouched(refusing), lastTouched(null)]).toEqual([null, null]);
});
