import { expect, test } from 'vitest';
import { isLetDownPerBeat } from './perBeat.js';
import { DEFAULT_DEFLATION_RULES } from './rules.js';

// Bedside handbook 3.6: 2 mmHg a beat at a slow (from memory) or irregular pulse; for all by one guideline.
test('by the beat at a slow or irregular pulse, at the limit and on both sides', () => {
  const { slowPulsePerMinute: slow } = DEFAULT_DEFLATION_RULES;
  const by = (pulse: number | null, isIrregular = false) =>
    isLetDownPerBeat(pulse, isIrregular, DEFAULT_DEFLATION_RULES);
  expect(by(slow - 1)).toBe(true);
  expect(by(slow + 1)).toBe(false);
  expect(by(slow)).toBe(false);
  expect(by(null)).toBe(false);
  expect(by(null, true)).toBe(true);
  expect(by(slow + 20, true)).toBe(true);
});

test('a place may say always or never', () => {
  expect(isLetDownPerBeat(90, false, { ...DEFAULT_DEFLATION_RULES, perBeatWhen: 'always' })).toBe(true);
  expect(isLetDownPerBeat(40, true, { ...DEFAULT_DEFLATION_RULES, perBeatWhen: 'never' })).toBe(false);
});
