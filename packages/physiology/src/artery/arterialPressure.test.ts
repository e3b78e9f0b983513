import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { beats } from '../heart/beats.js';
import { makePerson } from '../person/makePerson.js';
import type { Person } from '../person/person.js';
import { BLANK } from '../scenario/blank.js';
import { scenarioOf } from '../scenario/scenarios.js';
import { arterialPressure, arterialTrace, wristPulse } from './arterialPressure.js';

const person = makePerson(BLANK, 7);

/** Highest pulse at the wrist within 0.3 s after a foot at the elbow. */
function topAfter(who: Person, foot: number): number {
  return Math.max(...Array.from({ length: 60 }, (_, i) => wristPulse(who, PROPER, foot + 0.05 + 0.004 * i)));
}

test('the trace passes through each beat: its foot, its top and the foot of the next', () => {
  const found = beats(person, PROPER, 20, 40);
  for (const [i, beat] of found.slice(0, -1).entries()) {
    const next = found[i + 1];
    if (next === undefined) continue;
    const trace = arterialTrace(person, PROPER, beat.footSeconds, next.footSeconds - 1e-6, 1000);
    expect(trace[0]).toBeCloseTo(beat.arterialDiastolic, 6);
    expect(Math.abs(Math.max(...trace) - beat.arterialSystolic)).toBeLessThan(0.05);
    expect(Math.abs((trace.at(-1) ?? 0) - next.arterialDiastolic)).toBeLessThan(0.5);
  }
});

test('one instant is a trace of one point, and the wrist comes 50 ms later', () => {
  const trace = arterialTrace(person, PROPER, 20, 21, 100);
  expect(trace.length).toBe(101);
  expect(arterialPressure(person, PROPER, 20.5)).toBeCloseTo(trace[50] ?? 0, 9);
  const [beat] = beats(person, PROPER, 20, 40);
  const foot = beat?.footSeconds ?? 0;
  expect(wristPulse(person, PROPER, foot + 0.05)).toBeCloseTo(0, 6);
  expect(topAfter(person, foot)).toBeGreaterThan(0.95);
  expect(topAfter(person, foot)).toBeLessThan(1.05);
});

test('the mean pressure over a minute lies where the form factor puts it', () => {
  const trace = arterialTrace(person, PROPER, 10, 70, 200);
  const mean = trace.reduce((sum, x) => sum + x, 0) / trace.length;
  const found = beats(person, PROPER, 10, 70);
  const systolic = found.reduce((sum, b) => sum + b.arterialSystolic, 0) / found.length;
  const diastolic = found.reduce((sum, b) => sum + b.arterialDiastolic, 0) / found.length;
  // Physiology handbook 3.2: brachial 0.33 to 0.40.
  const form = (mean - diastolic) / (systolic - diastolic);
  expect(form).toBeGreaterThan(0.33);
  expect(form).toBeLessThan(0.4);
});

test('a beat too weak to be felt moves no finger', () => {
  const two = makePerson(scenarioOf('two-by-two') ?? BLANK, 1);
  const found = beats(two, PROPER, 10, 20);
  const top = (index: number) => topAfter(two, found[index]?.footSeconds ?? 0);
  const weak = found.findIndex((beat) => beat.isPremature);
  expect(top(weak)).toBe(0);
  expect(top(weak + 1)).toBeGreaterThan(0.7);
});
