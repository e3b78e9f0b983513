import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { hasOwnPulse, readRun } from './readRun.js';
import { pressureKey } from './setKey.js';

const keyed = (keys: string) => [...keys].reduce(pressureKey, '');
const asTyped = (typed: string) =>
  ({ method: 'auscultation', typed, fields: {}, reinflated: false }) as const;

// The trade's shorthand: bedside handbook 7.2.
test('a pulse typed on the keypad is that of its reading, as one that a keyboard typed', () => {
  const typed = asTyped(keyed('14086 60'));
  expect(typed.typed).toBe('140/86 60');
  const felt = { pulsePerMinute: 72, lostMmHg: null };
  expect(readRun(typed, felt, DEFAULT_DEFLATION_RULES).run?.pulsePerMinute).toBe(60);
  expect(hasOwnPulse(typed)).toBe(true);
});

test.each([
  ['140 86', '140/86'],
  ['140/86  6012', '140/86 601'],
  ['140/86 6/0', '140/86 60'],
  ['11862/0 68', '118/62/0 68'],
])('%s gives %s', (keys, text) => {
  expect(keyed(keys)).toBe(text);
});

test('what a keyboard typed that is no number stays as it is', () => {
  expect(pressureKey('147.5', '9')).toBe('147.59');
});
