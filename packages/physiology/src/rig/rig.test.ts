import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { makePerson } from '../person/makePerson.js';
import { BLANK } from '../scenario/blank.js';
import { SCENARIOS } from '../scenario/scenarios.js';
import type { Action } from './action.js';
import { type Rig, startRig } from './rig.js';
import { simulate } from './simulate.js';

const person = makePerson(BLANK, 5);
const PUMP: Action[] = [0, 100, 200, 300, 400, 500, 600].map((tick) => ({
  tick: 200 + tick,
  kind: 'squeeze',
  share: 0.9,
}));
const DOWN: Action = { tick: 1200, kind: 'valve', degrees: 45 };
const rigFor = (who = person) => startRig(who, PROPER, SOUND_INSTRUMENT);

test('by hand: the bulb fills the cuff, the valve lets it down ever more slowly, and sounds come in between', () => {
  const rig = rigFor();
  rig.advance(1200, PUMP);
  const peak = rig.cuffMmHg;
  expect(peak).toBeGreaterThan(150);
  const { sounds } = rig.advance(12_000, [DOWN]);
  expect(rig.cuffMmHg).toBeLessThan(76);
  expect(sounds.length).toBeGreaterThan(10);
  const first = sounds[0];
  const last = sounds.at(-1);
  expect(Math.abs((first?.cuffMmHg ?? 0) - 120)).toBeLessThan(12);
  expect(Math.abs((last?.cuffMmHg ?? 0) - 76)).toBeLessThan(10);
  // Onset after the foot of its beat, in order of time.
  for (const [i, sound] of sounds.entries())
    expect(sound.atSeconds).toBeGreaterThan(sounds[i - 1]?.atSeconds ?? 0);
});

/** Everything that comes of a rig in steps of so many ticks. */
function visit(rig: Rig, actions: readonly Action[], step: number): string {
  const all: unknown[] = [];
  const from = rig.tick;
  for (let tick = from; tick < 8000; tick += step) {
    const due = actions.filter((one) => one.tick >= tick && one.tick < tick + step);
    all.push(...rig.advance(tick + step, due).sounds);
  }
  return JSON.stringify([all.filter((one) => one !== null), rig.cuffMmHg, rig.needleMmHg]);
}

test('how often one asks makes no difference', () => {
  expect(visit(rigFor(), [...PUMP, DOWN], 1)).toBe(visit(rigFor(), [...PUMP, DOWN], 400));
});

test.each(SCENARIOS.map((one) => one.id))(
  '%s: a copy goes on as the original does, and neither disturbs the other',
  (id) => {
    const who = makePerson(SCENARIOS.find((one) => one.id === id) ?? BLANK, 8);
    const rig = rigFor(who);
    rig.advance(3000, [...PUMP, DOWN]);
    const copy = rig.copy();
    const twin = rig.copy();
    copy.advance(3500, [{ tick: 3000, kind: 'quick-release' }]);
    expect(visit(twin, [], 200)).toBe(visit(rig, [], 200));
  },
);

test('with the chest piece lifted nothing is heard, and pulses are felt all the same', () => {
  const rig = rigFor();
  const lifted: Action = { tick: 100, kind: 'chest-piece', offMm: null, held: 'light' };
  const { sounds, felt } = rig.advance(12_000, [lifted, ...PUMP, DOWN]);
  expect(sounds).toEqual([]);
  expect(rig.snapshot().isListening).toBe(false);
  expect(felt.filter(({ isFelt }) => isFelt).length).toBeGreaterThan(10);
  const off = rigFor().advance(12_000, [{ ...lifted, offMm: 20 }, ...PUMP, DOWN]).sounds;
  const on = rigFor().advance(12_000, [...PUMP, DOWN]).sounds;
  expect(off.length).toBe(on.length);
  expect((on[8]?.levelDb ?? 0) - (off[8]?.levelDb ?? 0)).toBeCloseTo(9.6, 9);
});

test('over the systolic no pulse is felt at the wrist; with the cuff down each is', () => {
  const rig = rigFor();
  rig.advance(1200, PUMP);
  const above = rig.advance(1600).felt;
  expect(above.filter(({ isFelt }) => isFelt)).toEqual([]);
  const after = rig
    .advance(4000, [{ tick: 1600, kind: 'quick-release' }])
    .felt.filter(({ atSeconds }) => atSeconds > 14);
  expect(after.length).toBeGreaterThan(4);
  expect(after.every(({ isFelt }) => isFelt)).toBe(true);
});

test('the needle swings with the pulse within the sounds and over the systolic, and not in a flat cuff', () => {
  const swingAt = (mmHg: number) => {
    const rig = startRig(person, PROPER, { ...SOUND_INSTRUMENT, frictionMmHg: 0 });
    rig.advance(1000, [{ tick: 0, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: mmHg }]);
    let low = Number.POSITIVE_INFINITY;
    let high = 0;
    for (let tick = 1000; tick < 1400; tick++) {
      rig.advance(tick + 1);
      low = Math.min(low, rig.needleMmHg);
      high = Math.max(high, rig.needleMmHg);
    }
    return high - low;
  };
  expect(swingAt(92)).toBeGreaterThan(1.5);
  expect(swingAt(130)).toBeGreaterThan(0.3);
  expect(swingAt(92)).toBeGreaterThan(swingAt(130));
  expect(swingAt(2)).toBe(0);
});

// Held with the valve shut: what an eye reads is the middle between the ends of the swing.
test.each([80, 100, 120])('at %i mmHg the middle of the needle’s swing is what is in the cuff', (mmHg) => {
  const rig = startRig(person, PROPER, { ...SOUND_INSTRUMENT, frictionMmHg: 0 });
  rig.advance(1000, [{ tick: 0, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: mmHg }]);
  const middles: number[] = [];
  let [low, high, beat] = [mmHg, mmHg, rig.snapshot().beat];
  for (let tick = 1000; tick < 6000; tick++) {
    rig.advance(tick + 1);
    const now = rig.snapshot().beat;
    if (now !== beat) {
      middles.push((low + high) / 2);
      [low, high, beat] = [rig.needleMmHg, rig.needleMmHg, now];
    }
    low = Math.min(low, rig.needleMmHg);
    high = Math.max(high, rig.needleMmHg);
  }
  const mean = middles.reduce((sum, one) => sum + one, 0) / middles.length;
  expect(middles.length).toBeGreaterThan(15);
  // A quarter of a graduation, since the gauge's lag rounds the tops off; the swing is 1.6 to 2.8 (physiology handbook 6.4).
  expect(Math.abs(mean - mmHg)).toBeLessThan(0.5);
});

test('an arm let hang within a run reads higher', () => {
  const run = (actions: Action[]) =>
    rigFor().advance(10_000, [
      { tick: 0, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: 160 },
      ...actions,
      { tick: 1000, kind: 'steady-fall', mmHgPerSecond: 2, toMmHg: 0 },
    ]).sounds;
  const first = (sounds: { cuffMmHg: number; atSeconds: number }[]) =>
    sounds.find(({ atSeconds }) => atSeconds > 5)?.cuffMmHg ?? 0;
  const up = first(run([{ tick: 500, kind: 'arm', belowHeartCm: 10 }])) - first(run([]));
  // 7.76 mmHg, give or take a beat of 1.7 mmHg.
  expect(Math.abs(up - 7.76)).toBeLessThan(1.8);
});

test('a visit from the scenario and the list of actions alone, the list in any order', () => {
  const actions = [DOWN, ...PUMP];
  const once = simulate(person, PROPER, SOUND_INSTRUMENT, actions, 40);
  const again = simulate(makePerson(BLANK, 5), PROPER, SOUND_INSTRUMENT, [...PUMP, DOWN], 40);
  expect(again).toEqual(once);
  expect(once.needle.length).toBe(40 * once.tracePerSecond + 1);
  expect(once.truth.effects.map(({ code }) => code)).toEqual([]);
});

test('a loose cuff wrapped again is empty, and from then on it is as one that was snug from the beginning', () => {
  const again: Action = { tick: 3000, kind: 'arrange', isCuffLoose: false };
  const later = PUMP.map((one) => ({ ...one, tick: one.tick + 4000 }));
  const loose = startRig(person, { ...PROPER, isCuffLoose: true }, SOUND_INSTRUMENT);
  const snug = rigFor();
  loose.advance(2990, PUMP);
  snug.advance(2990, PUMP);
  // Physiology handbook 6.1: a slack bladder takes more air for the same pressure.
  expect(loose.cuffMmHg).toBeLessThan(snug.cuffMmHg - 5);
  loose.advance(3990, [again]);
  expect(loose.cuffMmHg).toBe(0);
  snug.advance(3990, [{ tick: 3000, kind: 'cuff', bladder: SOUND_INSTRUMENT.bladder }]);
  loose.advance(5000, later);
  snug.advance(5000, later);
  expect(loose.cuffMmHg).toBe(snug.cuffMmHg);
  expect(loose.copy().snapshot()).toEqual(loose.snapshot());
});
