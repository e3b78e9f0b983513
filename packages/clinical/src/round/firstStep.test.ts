import { expect, test } from 'vitest';
import { DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_ACT_NOW_RULES } from './actNowRules.js';
import { DEFAULT_ARMS_RULES } from './armsRules.js';
import { AVERAGING_RULE_IDS } from './averagingRules.js';
import type { RoundEvent } from './event.js';
import { firstStep } from './firstStep.js';
import type { ReadingsCircumstances } from './furtherReading.js';
import { nextStep } from './nextStep.js';
import { DEFAULT_PLAN_RULES } from './planRules.js';
import { readingsRulesOf } from './readingsRules.js';
import { DEFAULT_RECHECK_RULES } from './recheckRules.js';
import { NO_ROUND_FACTS } from './roundFacts.js';
import { roundState } from './roundState.js';
import { PLACE } from './testing.js';

const prepared: RoundEvent = { what: 'prepared', exceptions: [] };
const placed: RoundEvent = { what: 'placed', place: PLACE };
const felt: RoundEvent = { what: 'estimated', estimate: { ...PLACE, lostMmHg: 132, atSeconds: 100 } };
const notDone = (sign: 'pulse' | 'breaths' | 'pressure'): RoundEvent => ({
  what: 'not-done',
  sign,
  reason: 'declined',
});

/** Whatever a reading could make of the circumstances. */
const KNOWN: readonly ReadingsCircumstances[] = [
  { irregular: true, raisedFrom: { systolic: 100, diastolic: 60 }, severe: null, atOnce: true },
  {
    irregular: false,
    raisedFrom: null,
    severe: {
      systolic: { comparison: '>=', limit: 180 },
      diastolic: { comparison: '>=', limit: 120 },
    },
    atOnce: false,
  },
];

// Bedside handbook 3.8: the order of a round; 3.10, 3.11: it is readings that ask for others.
test.each([
  [[], 'prepare'],
  [[prepared], 'pulse'],
  [[prepared, notDone('pulse')], 'breaths'],
  [[prepared, notDone('pulse'), notDone('breaths')], 'cuff'],
  [[prepared, notDone('pulse'), notDone('breaths'), placed], 'palpate'],
  [[prepared, notDone('pulse'), notDone('breaths'), placed, felt], 'listen'],
  [[prepared, notDone('pulse'), notDone('breaths'), notDone('pressure')], 'review'],
] as const)(
  'of a round in which nothing was taken the next step is known without readings',
  (events, step) => {
    const state = roundState([...events]);
    for (const rule of AVERAGING_RULE_IDS) {
      const rules = {
        plan: DEFAULT_PLAN_RULES,
        readings: readingsRulesOf(rule),
        cuff: DEFAULT_CUFF_RULES,
        arms: DEFAULT_ARMS_RULES,
        actNow: DEFAULT_ACT_NOW_RULES,
        recheck: DEFAULT_RECHECK_RULES,
      };
      const first = firstStep(state, NO_ROUND_FACTS, rules);
      expect(first.step).toBe(step);
      for (const known of KNOWN) expect(first).toEqual(nextStep(state, NO_ROUND_FACTS, known, rules));
    }
  },
);
