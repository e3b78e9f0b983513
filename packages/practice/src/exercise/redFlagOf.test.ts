import { DEFAULT_ACT_NOW_RULES } from '@evenfall/clinical';
import { BLANK } from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { couldBeKnown, redFlagOf } from './redFlagOf.js';

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

describe('whether a severe pressure could be known', () => {
  const known = (...written: Parameters<typeof couldBeKnown>[1]) =>
    couldBeKnown({ redFlag: 'severe-pressure', traits: BLANK.traits }, written, DEFAULT_ACT_NOW_RULES);

  test('by a number that was written, where it was severe itself', () => {
    expect(known({ systolic: 176, diastolic: 96 })).toBe(false);
    expect(known({ systolic: 182, diastolic: 96 })).toBe(true);
    expect(known(NOTHING, { systolic: 176, diastolic: null })).toBe(false);
  });

  test('whoever wrote no number at all was not misled by one', () => {
    expect(known()).toBe(true);
    expect(known(NOTHING, NOTHING)).toBe(true);
  });
});
