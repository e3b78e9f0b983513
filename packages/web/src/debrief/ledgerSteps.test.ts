import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { debrief, demonstrate, GOOD_OBSERVER } from '@evenfall/practice';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { ledgerSteps } from './ledgerSteps.js';

const words = wordsFor('en');

// Physiology handbook 1.2: the parts of the error sum to it.
test.each(['quiet-morning', 'stiff-pipe', 'open-gate', 'wide-sleeve'])(
  '%s: the steps that are drawn lead from what was true to what was written',
  (id) => {
    const scenario = scenarioOf(id) as Scenario;
    const circumstances = { ...PROPER, isTalking: true, armBelowHeartCm: 8 };
    const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
    const { ledger } = debrief(demonstrate(GOOD_OBSERVER, scenario, 4, circumstances, instrument));
    for (const one of [ledger.systolic, ledger.diastolic]) {
      if (one === null) throw new Error('no ledger');
      const { truth, steps } = ledgerSteps(one, words);
      const sum = steps.reduce((so, { mmHg }) => so + mmHg, truth);
      expect(sum).toBeCloseTo(one.entered, 9);
      // As they stand on the page, with one decimal, they add up too.
      for (const shown of [truth, ...steps.map(({ mmHg }) => mmHg)])
        expect(Math.abs(10 * shown - Math.round(10 * shown))).toBeLessThan(1e-9);
      expect(steps.map(({ key }) => key)).toContain('talking');
      expect(new Set(steps.map(({ key }) => key)).size).toBe(steps.length);
    }
  },
);

test('where it is not known when the needle was read, ear, eye and pen are one step', () => {
  const ledger = {
    entered: 120,
    longRun: 116,
    error: 4,
    physiology: 1,
    technique: [],
    sampling: -1,
    misheard: 0,
    imagined: 0,
    lag: 0,
    gauge: 0,
    digit: 0,
    unsplit: 4,
  };
  expect(ledgerSteps(ledger, words).steps.map(({ key, mmHg }) => [key, mmHg])).toEqual([
    ['physiology', 1],
    ['sampling', -1],
    ['unsplit', 4],
  ]);
});

// Physiology handbook 8.5 and 14, row 3: a gap of this person; begun within it the first sound is that at its bottom.
test('where the cuff was begun too low the step says so, and not that it was the beat', () => {
  const scenario = scenarioOf('stiff-pipe') as Scenario;
  const hand = { ...GOOD_OBSERVER.hand, palpatesFirst: false, peakMmHg: 156 };
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const { ledger, costs } = debrief(demonstrate({ ...GOOD_OBSERVER, hand }, scenario, 3, PROPER, instrument));
  expect(costs.costs.map(({ code }) => code)).toEqual(['not-felt-first']);
  if (ledger.systolic === null) throw new Error('no ledger');
  const sampling = (isBegunLow: boolean) =>
    ledgerSteps(ledger.systolic as NonNullable<typeof ledger.systolic>, words, isBegunLow).steps.find(
      ({ key }) => key === 'sampling',
    );
  expect(sampling(true)?.mmHg).toBeLessThan(-30);
  expect(sampling(true)?.label).toBe('cuff begun too low');
  expect(sampling(false)?.label).toBe('where the cuff was at the beat');
});
