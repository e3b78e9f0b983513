import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { UNKNOWN_CIRCUMSTANCES } from '../count/circumstances.js';
import { countResult } from '../count/countResult.js';
import { DEFAULT_COUNT_RULES } from '../count/rules.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { tapResult } from './tapResult.js';

// Check values: fixtures/README.md, recomputed from the files when they were made, without any repair.

/** The rows of a fixture, without its heading. */
function rows(file: string): string[][] {
  const text = readFileSync(new URL(`../../fixtures/${file}`, import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));
}

const BEATS = rows('mitdb-100-beats.csv').map(([sample, label]) => ({
  seconds: Number(sample) / 360,
  label,
}));
const BEAT_SECONDS = BEATS.map(({ seconds }) => seconds);
const ONSET_SECONDS = rows('tilt-12726-pulse-onsets.csv').map(([ms]) => Number(ms) / 1000);

function resultOf(seconds: readonly number[], repair: boolean) {
  return tapResult({ of: 'pulse', source: 'file', seconds }, { repair });
}

describe('half an hour of beats (MIT-BIH 100)', () => {
  test('rate, mean interval and SD', () => {
    const result = resultOf(BEAT_SECONDS, false);
    expect(result.beats).toBe(2273);
    expect(result.perMinute).toBeCloseTo(75.5103, 4);
    expect(result.meanIntervalMs).toBeCloseTo(794.5936, 4);
    expect(result.sdIntervalMs).toBeCloseTo(48.8461, 4);
  });

  test.each([
    [15, 72, 84, 2.9591],
    [30, 72, 80, 2.1978],
    [60, 73, 80, 1.9957],
  ] as const)('counted in windows of %i s', (windowSeconds, lowest, highest, sd) => {
    const rates = Array.from({ length: 1800 / windowSeconds }, (_, i) => {
      const [from, to] = [i * windowSeconds, (i + 1) * windowSeconds];
      const n = BEAT_SECONDS.filter((second) => from <= second && second < to).length;
      const count = { of: 'pulse', n, windowSeconds, clock: 'any', first: 1 } as const;
      return countResult(count, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES).perMinute;
    });
    expect(Math.min(...rates)).toBe(lowest);
    expect(Math.max(...rates)).toBe(highest);
    expect(sampleSd(rates)).toBeCloseTo(sd, 4);
    if (windowSeconds === 15) expect(mean(rates)).toBeCloseTo(75.5, 4);
  });

  test('its premature beats, labelled in the database, are occasional; nothing is repaired', () => {
    const result = resultOf(BEAT_SECONDS, true);
    expect(result.repairs).toEqual([]);
    expect(result.rhythm).toBe('occasionally-irregular');
  });

  test('a minute at a time, what is called occasionally irregular has a labelled premature beat, and nearly always', () => {
    let agreed = 0;
    let pieces = 0;
    for (let from = 0; from + 75 <= BEATS.length; from += 75) {
      const piece = BEATS.slice(from, from + 75);
      const isPremature = piece.slice(1, -1).some(({ label }) => label !== 'N');
      const { rhythm } = resultOf(
        piece.map(({ seconds }) => seconds),
        true,
      );
      pieces++;
      if ((rhythm === 'occasionally-irregular') === isPremature) agreed++;
    }
    expect(pieces).toBe(30);
    expect(agreed).toBeGreaterThanOrEqual(28);
  });
});

describe('an hour of pulse onsets found by a program (tilt 12726)', () => {
  test('rate, mean interval and SD', () => {
    const result = resultOf(ONSET_SECONDS, false);
    expect(result.beats).toBe(3669);
    expect(result.perMinute).toBeCloseTo(67.81, 2);
    expect(result.meanIntervalMs).toBeCloseTo(884.9, 1);
    expect(result.sdIntervalMs).toBeCloseTo(115.5, 1);
  });

  test('the gap of 2.924 s is reported as missed onsets and leaves the spread', () => {
    const at = ONSET_SECONDS.findIndex((second, i) => (ONSET_SECONDS[i + 1] as number) - second > 2.9);
    const result = resultOf(ONSET_SECONDS, true);
    expect(result.repairs).toContainEqual({ index: at + 1, what: 'missed', added: 2 });
    expect(result.sdIntervalMs).toBeLessThan(110);
    expect(result.perMinute).toBeGreaterThan(67.81);
  });
});
