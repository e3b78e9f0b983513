import { expect, test } from 'vitest';
import { runStrip } from './runStrip.js';

const SIZE = { width: 100, height: 50 };
const run = (times: readonly (number | null)[]) => ({
  method: 'auscultation' as const,
  gaugeStepMmHg: 2,
  pulsePerMinute: null,
  palpated: { lostMmHg: null, backMmHg: null },
  peak: { mmHg: 180, atSeconds: times[0] ?? null },
  reinflated: false,
  moments: [
    { what: 'first sound' as const, mmHg: 150, atSeconds: times[1] ?? null },
    { what: 'last sound' as const, mmHg: 80, atSeconds: times[2] ?? null },
  ],
});

test('a timed run is drawn by its times: 30 of 100 mmHg in the first quarter', () => {
  const { marks, isTimed } = runStrip(run([0, 10, 40]), SIZE);
  expect(isTimed).toBe(true);
  expect(marks.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [25, 12],
    [100, 40],
  ]);
});

test('without all its times it says so and stands at even distances', () => {
  const { marks, isTimed } = runStrip(run([0, null, 40]), SIZE);
  expect(isTimed).toBe(false);
  expect(marks.map(({ x }) => x)).toEqual([0, 50, 100]);
});

test('one number alone stands in the middle', () => {
  const one = {
    ...run([]),
    peak: null,
    moments: [{ what: 'pulse back' as const, mmHg: 122, atSeconds: null }],
  };
  expect(runStrip(one, SIZE).marks).toEqual([{ what: 'pulse back', mmHg: 122, x: 50, y: 0 }]);
});

test('numbers off a display are no let-down: no line is drawn between them', () => {
  const shown = runStrip({ ...run([null, null, null]), method: 'device', peak: null }, SIZE);
  expect([shown.isDisplay, shown.line]).toEqual([true, '']);
  expect(runStrip(run([null, null, null]), SIZE).line).not.toBe('');
});
