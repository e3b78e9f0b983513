import { parseTaps, tapResult } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { chanceFrom } from './chance.js';
import { inventTaps } from './inventTaps.js';

const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);

describe.each(['steady', 'breathing', 'no-pattern'] as const)('invented taps, %s', (rhythm) => {
  const given = { rhythm, meanMs: 800, beats: 60 };

  test('can always be tapped: as many as asked, rising, to the millisecond, from 0 on', () => {
    for (const seed of SEEDS) {
      const seconds = inventTaps(given, chanceFrom(seed));
      expect(seconds).toHaveLength(60);
      expect(seconds[0]).toBeGreaterThanOrEqual(0);
      expect(seconds.every((at) => Math.abs(at * 1000 - Math.round(at * 1000)) < 1e-6)).toBe(true);
      expect(parseTaps({ source: 'touch', seconds }).ok).toBe(true);
    }
  });

  test('have about the rate that was asked for', () => {
    for (const seed of SEEDS) {
      const seconds = inventTaps(given, chanceFrom(seed));
      const meanMs = ((seconds.at(-1) ?? 0) - (seconds[0] ?? 0)) * (1000 / 59);
      // Irregular intervals are drawn evenly over 0.76 of the mean: SD 0.22, over 59 of them 0.029; four of those.
      expect(Math.abs(meanMs / 800 - 1)).toBeLessThan(0.13);
    }
  });
});

test('without a pattern is never called regular, steady never irregular', () => {
  const words = (rhythm: 'steady' | 'no-pattern') =>
    SEEDS.map((seed) => {
      const read = parseTaps({
        source: 'touch',
        seconds: inventTaps({ rhythm, meanMs: 640, beats: 72 }, chanceFrom(seed)),
      });
      return read.ok ? tapResult(read.value, { repair: true }).rhythm : 'refused';
    });
  expect(words('no-pattern')).not.toContain('regular');
  expect(words('steady').filter((word) => word.endsWith('-irregular'))).toEqual([]);
});
