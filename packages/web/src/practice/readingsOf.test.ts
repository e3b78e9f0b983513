import type { Moment } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { hasNewFall, readingText } from './readingsOf.js';

const moment = (what: Moment['what'], mmHg: number): Moment => ({ what, mmHg, atSeconds: null });

// As the trade writes them (docs/conventions.md, section 1).
test.each([
  ['124/78', 'auscultation', [moment('first sound', 124), moment('last sound', 78)]],
  ['118/62/0', 'auscultation', [moment('first sound', 118), moment('muffled', 62), moment('last sound', 0)]],
  ['122/P', 'palpation', [moment('pulse back', 122)]],
] as const)('%s', (text, method, moments) => {
  expect(readingText({ method, moments: [...moments] })).toBe(text);
});

test('a reading that was written is done with until the cuff goes up again', () => {
  expect(hasNewFall({ peakSeconds: null, runFrom: null })).toBe(false);
  expect(hasNewFall({ peakSeconds: 30 })).toBe(true);
  expect(hasNewFall({ peakSeconds: 30, runFrom: 30 })).toBe(false);
  expect(hasNewFall({ peakSeconds: 95, runFrom: 30 })).toBe(true);
});
