import { describe, expect, test } from 'vitest';
import { Bulb } from './bulb.js';
import { strokeOf } from './hand.js';
import { BLADDERS, type Bladder, SOUND_INSTRUMENT } from './instrument.js';

/** Squeezes half a second apart until a pressure is reached; where each left the cuff. */
function steps(bladder: Bladder, toMmHg: number, effort = 1): number[] {
  const bulb = new Bulb({ ...SOUND_INSTRUMENT, bladder }, false);
  const after: number[] = [];
  for (let n = 0; n < 80 && bulb.mmHg < toMmHg; n++) {
    const tick = 100 * n + 100;
    bulb.act({ tick, kind: 'squeeze', share: strokeOf(bladder, false, bulb.mmHg, effort) }, tick);
    for (let at = tick; at < tick + 100; at++) bulb.tick(at);
    after.push(bulb.mmHg);
  }
  return after;
}

// Physiology handbook 6.1: ordinary hands take 10 to 15 squeezes.
test('an ordinary hand fills an adult cuff to 160 in 10 to 15 squeezes', () => {
  const n = steps('adult', 160).length;
  expect(n).toBeGreaterThanOrEqual(10);
  expect(n).toBeLessThanOrEqual(15);
});

// Common practice, no source: over 60 mmHg a squeeze is good for 10 to 20, so that one can stop 30 over the palpated.
describe.each(BLADDERS)('%s', (bladder) => {
  test('no squeeze runs away: none brings more than 20 mmHg, whatever is in the cuff', () => {
    const after = steps(bladder, 280);
    for (const [at, mmHg] of after.entries()) {
      const rise = mmHg - (after[at - 1] ?? 0);
      expect(rise).toBeGreaterThan(1);
      expect(rise).toBeLessThan(20);
    }
  });
});

test('over 60 mmHg an adult cuff goes up by 10 to 20 at a squeeze, by half of that at half a one', () => {
  for (const [effort, least, most] of [
    [1, 10, 20],
    [0.5, 5, 10],
  ] as const) {
    const after = steps('adult', 240, effort).filter((mmHg) => mmHg > 60);
    for (const [at, mmHg] of after.slice(1).entries()) {
      const rise = mmHg - (after[at] ?? 0);
      expect(rise).toBeGreaterThan(least);
      expect(rise).toBeLessThan(most);
    }
  }
});

test('no hand has more than a full stroke, and none at all gives nothing', () => {
  expect(strokeOf('thigh', true, 0, 2)).toBeLessThanOrEqual(1);
  expect(strokeOf('adult', false, 120, 0)).toBe(0);
});
