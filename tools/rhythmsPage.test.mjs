import { readFile } from 'node:fs/promises';
import * as physiology from '@evenfall/physiology';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { rhythmsFigure, rhythmsOf, rhythmsPage, rmssdOf, sdOf } from './rhythmsPage.mjs';

const rhythms = await rhythmsOf(physiology);
const [record, tilt] = rhythms;

test('docs/rhythms.md and docs/rhythms.svg say what the code gives', async () => {
  const kept = (name) => readFile(new URL(`../docs/${name}`, import.meta.url), 'utf8');
  expect(await kept('rhythms.md'), 'run `node tools/rhythms.mjs --write`').toBe(rhythmsPage(rhythms));
  expect(await kept('rhythms.svg')).toBe(rhythmsFigure(rhythms));
});

// Check values of clinical/fixtures/README.md.
test('the real records come to what is known of them', () => {
  expect(record.real.intervals).toBe(2272);
  expect(record.real.mean).toBeCloseTo(794.5936, 4);
  expect(record.real.sd).toBeCloseTo(48.8461, 4);
  expect(tilt.real.mean / 1000).toBeCloseTo(0.8849, 4);
  expect(tilt.real.sd / 1000).toBeCloseTo(0.1155, 4);
});

// jstat, a general-purpose library.
test('SD and RMSSD are those of a library', () => {
  const some = record.real.all.slice(0, 500).map(({ ms }) => ms);
  expect(sdOf(some)).toBeCloseTo(jstat.stdev(some, true), 9);
  const steps = some.slice(1).map((one, i) => one - some[i]);
  expect(rmssdOf(some) ** 2).toBeCloseTo(jstat.sumsqrd(steps) / steps.length, 6);
});

// The rate is chosen as the real one. The variation is that of the table of physiology handbook 2.1, 50/41 ms in five minutes of
// somebody of 25 to 34: within a quarter for one person and one seed.
test('simulated beats have the rate of the real ones, and the variation of the table', () => {
  for (const { real, simulated } of rhythms)
    expect(Math.abs(simulated.keptMean / real.keptMean - 1)).toBeLessThan(0.03);
  expect(Math.abs(tilt.simulated.stretchSd / 50 - 1)).toBeLessThan(0.25);
  expect(Math.abs(tilt.simulated.stretchRmssd / 41 - 1)).toBeLessThan(0.25);
});

test('with premature beats intervals lie as wide as those of the real heart with as many, within a quarter', () => {
  expect(record.simulated.leftOut).toBeGreaterThan(0);
  expect(Math.abs(record.simulated.keptSd / record.real.keptSd - 1)).toBeLessThan(0.25);
});
