import { DEFAULT_ACT_NOW_RULES } from '@evenfall/clinical';
import { BLANK } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { redFlagOf } from './redFlagOf.js';

const NOTHING = { systolic: null, diastolic: null };
const flagOf = (systolic: number | null, diastolic: number | null, isPregnant = false) =>
  redFlagOf(
    { redFlag: null, traits: { ...BLANK.traits, isPregnant } },
    [NOTHING, { systolic, diastolic }],
    DEFAULT_ACT_NOW_RULES,
  );

// Bedside handbook 3.16: severe from 180 or 120 on; in pregnancy from 160 or 110 on.
test.each([
  [179, 119, false, null],
  [180, 80, false, 'severe-pressure'],
  [140, 120, false, 'severe-pressure'],
  [180, null, false, 'severe-pressure'],
  [null, null, false, null],
  [159, 109, true, null],
  [160, 90, true, 'severe-in-pregnancy'],
  [150, 110, true, 'severe-in-pregnancy'],
] as const)('%s/%s, pregnant %s: %s', (systolic, diastolic, isPregnant, flag) => {
  expect(flagOf(systolic, diastolic, isPregnant)).toBe(flag);
});

test('what the scenario is about goes first', () => {
  const scenario = { redFlag: 'severe-in-pregnancy', traits: BLANK.traits } as const;
  expect(redFlagOf(scenario, [{ systolic: 190, diastolic: 90 }], DEFAULT_ACT_NOW_RULES)).toBe(
    'severe-in-pregnancy',
  );
});
