import type { Count } from '@evenfall/clinical';
import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { debrief } from '../exercise/debrief.js';
import { demonstrate } from '../exercise/demonstrate.js';
import type { Evidence } from '../exercise/exercise.js';
import { GOOD_OBSERVER } from '../observer/observer.js';

const taken = (id: string, some: Partial<Evidence>) => {
  const scenario = scenarioOf(id) as Scenario;
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const exercise = demonstrate(GOOD_OBSERVER, scenario, 2, PROPER, instrument);
  return debrief({ ...exercise, evidence: { ...exercise.evidence, ...some } });
};
const counted = (n: number, windowSeconds = 60) => {
  const count: Count = { of: 'pulse', n, windowSeconds, clock: 'any', first: 1 };
  return { startSeconds: 2, count };
};
const codes = ({ conduct }: ReturnType<typeof taken>) => conduct.map(({ code }) => code);

// Bedside handbook 1.10: a deficit over 10 is often quoted as one to report; 1.1: at the apex a full minute, each pair one beat.
test('many beats that do not arrive, and nobody listened at the apex: it is said; listened to, it is not', () => {
  const wrist = taken('storm-of-leaves', {}).rates.wristPerMinute;
  const alone = taken('storm-of-leaves', { pulse: counted(Math.round(wrist)) });
  const said = alone.conduct.find(({ code }) => code === 'apex-not-counted');
  expect(said?.doInstead).toBe('count-at-apex');
  expect(said?.figures.deficitPerMinute).toBeGreaterThan(10);
  const { there } = taken('storm-of-leaves', { apex: counted(1) }).counts.apex ?? { there: 0 };
  const both = taken('storm-of-leaves', { pulse: counted(Math.round(wrist)), apex: counted(there) });
  expect(codes(both)).not.toContain('apex-not-counted');
  expect(codes(both)).not.toContain('apex-miscounted');
  expect(both.rates.heartPerMinute).toBe(both.counts.apex?.truePerMinute);
  expect(both.rates.heartPerMinute - both.rates.wristPerMinute).toBeGreaterThan(10);
});

// Simulated here, no source: a count is held against the minute that it was made in. Bedside handbook 1.10: the two in one minute.
test.each([
  ['leaves-in-wind', 1],
  ['storm-of-leaves', 1],
  ['calm-after-stairs', 1],
])('%s, wrist and heart counted minutes apart: beats that do not arrive are of one minute', (id, seed) => {
  const scenario = scenarioOf(id) as Scenario;
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const exercise = demonstrate(GOOD_OBSERVER, scenario, seed, PROPER, instrument);
  const { startSeconds: _, count } = counted(70);
  const evidence = {
    ...exercise.evidence,
    pulse: { startSeconds: 10, count },
    apex: { startSeconds: 200, count },
  };
  const { rates, counts } = debrief({ ...exercise, evidence });
  const { heartPerMinute, wristPerMinute } = counts.apex ?? { heartPerMinute: null, wristPerMinute: null };
  expect(heartPerMinute).toBe(counts.apex?.truePerMinute);
  expect(wristPerMinute).toBeLessThanOrEqual(heartPerMinute ?? 0);
  expect(rates.deficitPerMinute).toBe((heartPerMinute ?? 0) - (wristPerMinute ?? 0));
  expect(counts.pulse?.wristPerMinute).toBe(counts.pulse?.truePerMinute);
});

test('counted each sound for itself, or for half a minute, it is named', () => {
  const { there } = taken('storm-of-leaves', { apex: counted(1) }).counts.apex ?? { there: 0 };
  expect(codes(taken('storm-of-leaves', { apex: counted(2 * there) }))).toContain('apex-miscounted');
  const short = taken('storm-of-leaves', { apex: counted(Math.round(there / 2), 30) });
  expect(short.conduct.find(({ code }) => code === 'apex-window-short')?.figures).toEqual({
    windowSeconds: 30,
    neededSeconds: 60,
  });
});

test('where every beat arrives nobody has to listen there', () => {
  expect(codes(taken('quiet-morning', { pulse: counted(68) }))).not.toContain('apex-not-counted');
});
