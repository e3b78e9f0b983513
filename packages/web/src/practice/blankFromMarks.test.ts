import { expect, test } from 'vitest';
import { AT } from '../round/testing.js';
import { blankFromMarks } from './blankFromMarks.js';

const fields = (
  ...given: [method: 'auscultation' | 'palpation', marks: number[], peakSeconds: number | null]
) => blankFromMarks(...given, AT(1)).fields;

test('the times of marked moments stand on the keypad to a tenth of a second, counted from the peak', () => {
  expect(fields('auscultation', [50.113, 61.4, 86.325], 50.113)).toEqual({
    firstAtSeconds: '11.3',
    lastAtSeconds: '36.2',
  });
  expect(fields('palpation', [60.96, 86.3], 50)).toEqual({ firstAtSeconds: '11' });
});

test('what was marked before the peak, or without one, is of no run', () => {
  expect(fields('auscultation', [40, 49.9], 50)).toEqual({});
  expect(fields('auscultation', [60], 50)).toEqual({ firstAtSeconds: '10' });
  expect(fields('auscultation', [60], null)).toEqual({});
});
