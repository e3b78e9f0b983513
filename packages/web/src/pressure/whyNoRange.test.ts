import { DEFAULT_RUN_RULES, parseRun, runResult, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { whyNoRange } from './whyNoRange.js';

function keyOf(input: Record<string, unknown>): string {
  const read = parseRun({ method: 'auscultation', ...input });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const { why } = runResult(read.value, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
  return whyNoRange({ why: why.map((one) => ({ ...one, figures: { ...one.figures } })) });
}

const MOMENTS = [
  { what: 'first sound', mmHg: 148 },
  { what: 'last sound', mmHg: 92 },
];
const TIMED = [
  { what: 'first sound', mmHg: 148, atSeconds: 10 },
  { what: 'last sound', mmHg: 92, atSeconds: 30 },
];
const PEAK = { mmHg: 176, atSeconds: 0 };

// docs/conventions.md section 6: both ranges are null without pulse or time.
test('what is said to be missing for a range is what is missing', () => {
  expect(keyOf({ moments: MOMENTS })).toBe('pressure.noRange');
  expect(keyOf({ moments: MOMENTS, pulsePerMinute: 76 })).toBe('postures.noRangeTimes');
  expect(keyOf({ moments: TIMED, peak: PEAK })).toBe('postures.noRangePulse');
  expect(keyOf({ moments: TIMED, peak: PEAK, pulsePerMinute: 76, reinflated: true })).toBe(
    'postures.noRangeAtAll',
  );
  const felt = { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }], pulsePerMinute: 76 };
  expect(keyOf(felt)).toBe('postures.noRangeTimes');
});
