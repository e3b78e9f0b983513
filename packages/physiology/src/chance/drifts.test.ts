import { expect, test } from 'vitest';
import { Drift } from './drift.js';
import { Drifts } from './drifts.js';

test('courses moved together are to the last bit those moved alone', () => {
  const seconds = [5, 15, 405];
  const together = new Drifts(seconds);
  const alone = seconds.map(() => new Drift());
  together.restart(77, 2);
  alone.forEach((drift, i) => {
    drift.restart(77, 2 + i, seconds[i] ?? 1);
  });
  for (const at of [-3, 0, 0.7, 1.5, 6, 6.1, 30, 900]) {
    together.moveTo(at);
    for (const drift of alone) drift.moveTo(at);
    expect([...together.values]).toEqual(alone.map(({ value }) => value));
  }
});
