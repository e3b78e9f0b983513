import { type GaugeDone, gaugeStanding } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { gaugeStandingText } from './gaugeStandingText.js';
import { wordsFor } from './words.js';

const words = wordsFor('en-GB');
const done = (of: GaugeDone['of'], day: string, verdict: GaugeDone['verdict'] = 'good'): GaugeDone => ({
  of,
  verdict,
  day,
  atMs: Date.parse(`${day}T08:00:00Z`),
});
const WHOLE = [done('zero', '2026-05-25'), done('comparison', '2026-03-01'), done('leak', '2026-05-01')];
const said = (log: readonly GaugeDone[], today: string, endedOn: string | null = null) =>
  gaugeStandingText({ standing: gaugeStanding('aneroid', log, today), endedOn }, words, (day) => `<${day}>`);

test.each([
  ['2026-05-26', WHOLE, 'In order; next: zero, by <2026-06-01>'],
  ['2026-06-02', WHOLE, 'Check due: zero'],
  ['2026-09-02', WHOLE, 'Check due: zero and comparison'],
  ['2026-05-26', [], 'Check due: zero, comparison and leak test'],
  ['2026-05-26', [...WHOLE, done('leak', '2026-05-26', 'failed')], 'Out of use: leak test failed'],
] as const)('on %s', (today, log, text) => {
  expect(said(log, today)).toBe(text);
});

test('of what is here no more says that alone', () => {
  expect(said([done('zero', '2026-05-25', 'failed')], '2026-05-26', '2026-05-27')).toBe(
    'here no more since <2026-05-27>',
  );
});
