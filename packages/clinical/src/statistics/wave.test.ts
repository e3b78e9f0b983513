import { expect, test } from 'vitest';
import { cosinePowers } from './cosinePowers.js';
import { strongestWave, type Wave, waveVarianceOfMean } from './wave.js';

const BAND = { shortest: 3, longest: 12 };

/** A wave of amplitude 1, `period` values long. */
function wave(n: number, period: number, phase: number): number[] {
  return Array.from({ length: n }, (_, t) => Math.sin((2 * Math.PI * t) / period + phase));
}

test('finds the period of a wave, and nearly all of its power', () => {
  const list = wave(60, 5, 0.3);
  const found = strongestWave(cosinePowers(list, 59), 60, BAND) as Wave;
  expect((2 * 60) / found.place).toBeCloseTo(5, 0);
  expect(found.power / 30).toBeGreaterThan(0.8);
});

test('looks only within the band', () => {
  const found = strongestWave(cosinePowers(wave(60, 2.2, 0), 59), 60, BAND) as Wave;
  expect(found.power).toBeLessThan(2);
  expect(strongestWave(cosinePowers(wave(4, 3, 0), 3), 4, BAND)).toBeNull();
});

test('the variance that a wave leaves in the mean is that of its means over phases and parts of a turn', () => {
  const n = 47;
  const squares: number[] = [];
  for (let halfTurns = 16; halfTurns < 18; halfTurns += 0.1) {
    for (let phase = 0; phase < 2 * Math.PI; phase += 0.1) {
      const sum = wave(n, (2 * n) / halfTurns, phase).reduce((total, value) => total + value, 0);
      squares.push((sum / n) ** 2);
    }
  }
  const direct = squares.reduce((sum, one) => sum + one, 0) / squares.length;
  const formula = waveVarianceOfMean({ place: 17, power: n / 2 }, n);
  expect(formula / direct).toBeGreaterThan(0.95);
  expect(formula / direct).toBeLessThan(1.05);
});
