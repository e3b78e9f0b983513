import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ArmPair, armDifference, armPairs } from './armDifference.js';
import { type ArmsRules, DEFAULT_ARMS_RULES } from './armsRules.js';

const NICE: ArmsRules = { ...DEFAULT_ARMS_RULES, limitMmHg: { comparison: '>', limit: 15 } };
const ISH: ArmsRules = { ...DEFAULT_ARMS_RULES, limitMmHg: { comparison: '>', limit: 10 } };

const pair = (right: number, left: number): ArmPair => ({
  right: { systolic: right, diastolic: 80 },
  left: { systolic: left, diastolic: 84 },
});

const codes = (found: ReturnType<typeof armDifference>) => found?.why.map(({ code }) => code);

describe('the check values of the bedside handbook, section 8', () => {
  test('C061: right 148, left 132 by NICE: +16 is over 15, repeat both', () => {
    const found = armDifference([pair(148, 132)], NICE);
    expect(found).toMatchObject({ systolicMmHg: 16, isRepeatNeeded: true, higherArm: null });
    expect(codes(found)).toEqual(['arms-repeat']);
  });

  test('C062: right 146, left 132 the second time: 14, either arm, note it', () => {
    const found = armDifference([pair(148, 132), pair(146, 132)], NICE);
    expect(found).toMatchObject({ systolicMmHg: 14, isRepeatNeeded: false, higherArm: null, pairs: 2 });
    expect(found?.meanSystolicMmHg).toBe(15);
    expect(codes(found)).toEqual(['arms-either']);
  });

  test('C063: right 128, left 140 repeated by ISH: -12, use the left', () => {
    const found = armDifference([pair(128, 140), pair(128, 140)], ISH);
    expect(found).toMatchObject({ systolicMmHg: -12, isRepeatNeeded: false, higherArm: 'left' });
    expect(codes(found)).toEqual(['arms-higher']);
  });
});

// Bedside handbook 3.12: over the limit, not at it; over 20 somebody looks further.
test.each<[ArmsRules, number, string | null, string[]]>([
  [NICE, 14, null, ['arms-either']],
  [NICE, 15, null, ['arms-either']],
  [NICE, 16, 'right', ['arms-higher']],
  [NICE, -16, 'left', ['arms-higher']],
  [ISH, 10, null, ['arms-either']],
  [ISH, 11, 'right', ['arms-higher']],
  [ISH, 20, 'right', ['arms-higher']],
  [ISH, 21, 'right', ['arms-higher', 'arms-look-further']],
  [ISH, -21, 'left', ['arms-higher', 'arms-look-further']],
])('limit %j, a repeated difference of %d', (rules, difference, higherArm, expected) => {
  const pairs = [pair(150, 150 - difference), pair(150, 150 - difference)];
  const found = armDifference(pairs, rules);
  expect([found?.higherArm, codes(found)]).toEqual([higherArm, expected]);
});

test('a place that repeats nothing takes the first pair at its word', () => {
  expect(armDifference([pair(148, 132)], { ...NICE, pairsNeeded: 1 })).toMatchObject({
    isRepeatNeeded: false,
    higherArm: 'right',
  });
});

test('the difference is right minus left; a diastolic that is not known leaves none', () => {
  const felt: ArmPair = { right: { systolic: 130, diastolic: null }, left: { systolic: 126, diastolic: 80 } };
  expect(armDifference([felt], ISH)).toMatchObject({ systolicMmHg: 4, diastolicMmHg: null });
  expect(armDifference([felt], ISH)?.meanDiastolicMmHg).toBeNull();
  expect(armDifference([pair(130, 126)], ISH)).toMatchObject({ diastolicMmHg: -4, meanDiastolicMmHg: -4 });
  expect(armDifference([], ISH)).toBeNull();
});

test('arms changed for each other change the sign and the arm, and nothing else', () => {
  const mmHg = fc.integer({ min: 80, max: 220 });
  fc.assert(
    fc.property(fc.array(fc.tuple(mmHg, mmHg), { minLength: 1, maxLength: 3 }), (numbers) => {
      const one = armDifference(
        numbers.map(([a, b]) => pair(a, b)),
        NICE,
      );
      const other = armDifference(
        numbers.map(([a, b]) => pair(b, a)),
        NICE,
      );
      expect((one?.systolicMmHg ?? 0) + (other?.systolicMmHg ?? 0)).toBe(0);
      expect(other?.isRepeatNeeded).toBe(one?.isRepeatNeeded);
      const swapped = { right: 'left', left: 'right' } as const;
      expect(other?.higherArm).toBe(one?.higherArm ? swapped[one.higherArm] : null);
    }),
  );
});

const BY_EAR = { diastolic: 80, method: 'auscultation', posture: 'sit' } as const;

// Bedside handbook 3.4: by feel the systolic lies up to about 10 below the one by ear, which is no other arm.
test('a reading by feel is held against none by ear, nor one lying against one sitting', () => {
  const heard = { ...BY_EAR, side: 'right', systolic: 150 } as const;
  const felt = { side: 'left', systolic: 134, diastolic: null, method: 'palpation', posture: 'sit' } as const;
  const left = { ...BY_EAR, side: 'left', systolic: 146 } as const;
  expect(armPairs([heard, felt])).toEqual([]);
  expect(armPairs([felt, { ...felt, side: 'right' }])).toEqual([]);
  expect(armPairs([heard, felt, left]).map((one) => one.left.systolic)).toEqual([146]);
  expect(armPairs([heard, { ...left, posture: 'lie' }])).toEqual([]);
  expect(armPairs([heard, { ...left, posture: 'lie' }, left]).map((one) => one.left.systolic)).toEqual([146]);
});

test('readings are paired in turn, each once', () => {
  const reading = (side: 'right' | 'left', systolic: number) => ({ ...BY_EAR, side, systolic });
  const found = armPairs([
    reading('left', 132),
    reading('right', 148),
    reading('right', 146),
    reading('right', 147),
    reading('left', 131),
    reading('left', 130),
  ]);
  expect(found.map(({ right, left }) => [right.systolic, left.systolic])).toEqual([
    [148, 132],
    [147, 131],
  ]);
  expect(armPairs([reading('left', 132)])).toEqual([]);
});
