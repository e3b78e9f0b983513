import { parseRun } from '@evenfall/clinical';
import {
  bladderFor,
  PROPER,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { sumOfLedger } from '../ledger/ledger.js';
import { GOOD_OBSERVER, PERFECT_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { demonstrate } from './demonstrate.js';

const shown = (scenario: Scenario, observer = GOOD_OBSERVER, seed = 1) =>
  demonstrate(observer, scenario, seed, PROPER, { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) });
const quiet = scenarioOf('quiet-morning') as Scenario;

test.each(SCENARIOS.map((one) => [one.id, one] as const))(
  '%s: the run is one that the bedside takes, and the ledger sums to the error',
  (_, scenario) => {
    const exercise = shown(scenario);
    const run = exercise.evidence.run?.run;
    expect(run).toBeDefined();
    expect(parseRun(run)).toMatchObject({ ok: true });
    const { ledger } = debrief(exercise);
    for (const one of [ledger.systolic, ledger.diastolic]) {
      if (one === null) throw new Error('no ledger');
      expect(sumOfLedger(one)).toBeCloseTo(one.entered - one.longRun, 9);
    }
  },
);

test('an exercise is replayed from seed and actions alone, to the last bit', () => {
  const exercise = shown(quiet);
  const again = JSON.parse(JSON.stringify(exercise)) as typeof exercise;
  expect(debrief(again)).toEqual(debrief(exercise));
});

test('another seed is another visit', () => {
  expect(shown(quiet, GOOD_OBSERVER, 2).entered).not.toEqual(shown(quiet).entered);
});

describe('a perfect observer', () => {
  const hand = { ...PERFECT_OBSERVER.hand, mostPerBeatMmHg: null };
  const { ledger } = debrief(shown(quiet, { ...PERFECT_OBSERVER, hand }));

  test('has no observer part: no lag, nothing misheard, nothing rounded', () => {
    expect(ledger.systolic).toMatchObject({ misheard: 0, unsplit: 0 });
    expect(ledger.systolic?.lag).toBeCloseTo(0, 9);
    expect(ledger.systolic?.digit).toBeCloseTo(0, 9);
    expect(ledger.systolic?.technique).toEqual([]);
  });

  // 2.5 mmHg/s times 0.08 s of an aneroid (physiology handbook 6.3: r x tau).
  test('still has the lag of the gauge', () => {
    expect(ledger.systolic?.gauge).toBeCloseTo(0.2, 2);
    expect(ledger.diastolic?.gauge).toBeCloseTo(0.2, 2);
  });

  // Physiology handbook 9: the first tap lies under the beat's systolic, the last one over the beat's diastolic.
  test('takes a beat below its systolic and one above its diastolic', () => {
    expect(ledger.systolic?.sampling).toBeLessThanOrEqual(0);
    expect(ledger.diastolic?.sampling).toBeGreaterThanOrEqual(0);
  });
});

test('each fault of technique is a line of its own, at its published size', () => {
  const circumstances = { ...PROPER, isTalking: true, armBelowHeartCm: 10 };
  const exercise = demonstrate(GOOD_OBSERVER, quiet, 1, circumstances, SOUND_INSTRUMENT);
  const { ledger, reference } = debrief(exercise);
  const lines = Object.fromEntries((ledger.systolic?.technique ?? []).map(({ code, mmHg }) => [code, mmHg]));
  // Physiology handbook 12: .776 mmHg per cm; talking +6 to +10.
  expect(lines['arm-height']).toBeCloseTo(7.76, 2);
  expect(lines.talking).toBeGreaterThanOrEqual(6);
  expect(lines.talking).toBeLessThanOrEqual(10);
  // What it is held against knows nothing of them.
  expect(reference.systolic).toBeCloseTo(debrief(shown(quiet)).reference.systolic, 0);
});

describe('a gap', () => {
  const stiff = scenarioOf('stiff-pipe') as Scenario;

  // Physiology handbook 14: 160 to 134 in this person at rest.
  test('lies where the book has it, and nothing that a normal ear hears lies well inside it', () => {
    const { gap, sounds, fall } = debrief(shown(stiff));
    if (gap === null || fall === null) throw new Error('no gap');
    expect(Math.abs(gap.topMmHg - 160)).toBeLessThan(12);
    expect(gap.topMmHg - gap.bottomMmHg).toBeCloseTo(26, 9);
    const inside = sounds.filter(
      ({ atSeconds, cuffMmHg }) =>
        atSeconds > fall.peakSeconds && cuffMmHg < gap.topMmHg - 4 && cuffMmHg > gap.bottomMmHg + 4,
    );
    expect(inside.filter(({ isAudible }) => isAudible)).toEqual([]);
    expect(debrief(shown(quiet)).gap).toBeNull();
  });

  test('goes up with the pressure of the visit', () => {
    const talking = debrief(
      demonstrate(GOOD_OBSERVER, stiff, 1, { ...PROPER, isTalking: true }, SOUND_INSTRUMENT),
    );
    const rise = (talking.gap?.topMmHg ?? 0) - (debrief(shown(stiff)).gap?.topMmHg ?? 0);
    // Physiology handbook 12: talking +6 to +10.
    expect(rise).toBeGreaterThan(4);
    expect(rise).toBeLessThan(12);
  });
});

test('an act-first sign is seen only when it was said', () => {
  const flagged = scenarioOf('unheralded') as Scenario;
  const exercise = shown(flagged);
  expect(debrief(exercise).redFlag).toMatchObject({ code: 'severe-pressure', isSeen: false });
  const said = { ...exercise, evidence: { ...exercise.evidence, saysActNow: true } };
  expect(debrief(said).redFlag).toMatchObject({ isSeen: true });
  expect(debrief(shown(quiet)).redFlag).toBeNull();
});
