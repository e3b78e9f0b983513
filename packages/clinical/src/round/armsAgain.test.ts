import { describe, expect, test } from 'vitest';
import { armDifference, armPairs } from './armDifference.js';
import { armsAgain } from './armsAgain.js';
import { DEFAULT_ARMS_RULES } from './armsRules.js';
import type { RoundReading } from './roundReading.js';
import { reading } from './testing.js';

const STOP = 5;
const right = (systolic: number, more: Partial<RoundReading> = {}) => reading({ systolic, ...more });
const left = (systolic: number, more: Partial<RoundReading> = {}) =>
  reading({ systolic, side: 'left', ...more });
const asked = (readings: readonly RoundReading[], rules = DEFAULT_ARMS_RULES) =>
  armsAgain(readings, rules, STOP);

// Bedside handbook 3.12: a difference over 10 (ESC, ISH) or 15 (NICE NG136) is repeated in both arms.
describe('after two arms that differ too much', () => {
  const first = [right(142), right(156), left(144)];

  test('the arm with the cuff is measured again, then the other one, and then nothing more is asked', () => {
    expect(asked(first)).toMatchObject({ side: 'left', posture: 'sit', why: [{ code: 'arms-repeat' }] });
    expect(asked([...first, left(146)])).toMatchObject({ side: 'right', posture: 'sit' });
    expect(asked([...first, left(146), right(158)])).toBeNull();
    expect(asked([...first, left(146), right(150)])).toBeNull();
  });

  test('by the limit of the place, and not where it repeats none', () => {
    const limitMmHg = { comparison: '>', limit: 15 } as const;
    expect(asked(first, { ...DEFAULT_ARMS_RULES, limitMmHg })).toBeNull();
    expect(asked([right(156), left(146)])).toBeNull();
    expect(asked(first, { ...DEFAULT_ARMS_RULES, pairsNeeded: 1 })).toBeNull();
  });

  test('a reading by feel, on the feet or at another site makes no pair and is not gone on with', () => {
    const felt = { method: 'palpation', diastolic: null } as const;
    expect(asked([...first, left(146, felt)])).toMatchObject({ side: 'left' });
    expect(asked([...first, left(120, { posture: 'stand' })])).toMatchObject({
      side: 'left',
      posture: 'sit',
    });
    expect(asked([right(156, { site: 'forearm' }), left(140, { site: 'forearm' })])).toBeNull();
  });

  test('it is asked for no longer once as many were taken there as are taken at most', () => {
    const felt = left(140, { method: 'palpation', diastolic: null });
    expect(asked([right(156), left(144), felt, felt, felt])).not.toBeNull();
    expect(asked([right(156), left(144), felt, felt, felt, felt])).toBeNull();
  });
});

test('it asks for an arm where the comparison of the round asks for a repeat, and nowhere else', () => {
  const systolics = [120, 128, 131, 144, 156];
  for (const a of systolics)
    for (const b of systolics)
      for (const c of systolics) {
        const readings = [right(a), left(b), left(c)];
        const difference = armDifference(armPairs(readings), DEFAULT_ARMS_RULES);
        expect(asked(readings) !== null).toBe(difference?.isRepeatNeeded);
      }
});
