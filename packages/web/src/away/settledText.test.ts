import { usualResult } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { settledText } from './settledText.js';

const words = wordsFor('en-GB');

function said(home: { mean: number; readings: number; days: number } | null, byDay: number | null): string {
  const result = usualResult({
    component: 'systolic',
    ageYears: null,
    sex: null,
    office: null,
    home: home === null ? null : { ...home, own: null },
    ambulatory: byDay === null ? null : { mean: byDay },
    threshold: 135,
    offset: 0,
  });
  return result === null ? '' : settledText(result, 135, words);
}

// Words of out-of-office handbook 17.4; the numbers are invented.
test('three more days would settle it, or more readings will not', () => {
  expect(said({ mean: 140, readings: 12, days: 3 }, null)).toBe(
    'Against 135, 3 more days like these would settle it.',
  );
  expect(said({ mean: 141, readings: 8, days: 2 }, null)).toMatch(/^Against 135, this stands clear already/);
  expect(said({ mean: 137, readings: 28, days: 7 }, null)).toBe(
    'Against 135, more readings of the same kind will not settle it.',
  );
});

test('of a recording alone nothing is said of more days', () => {
  expect(said(null, 137)).toBe('');
  expect(said(null, 150)).toMatch(/^Against 135, this stands clear already/);
});
