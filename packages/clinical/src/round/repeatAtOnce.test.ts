import { describe, expect, test } from 'vitest';
import { recheckAfter } from './recheckAfter.js';
import { DEFAULT_RECHECK_RULES } from './recheckRules.js';
import { alertsBeside, rechecksBeside, repeatAtOnce } from './repeatAtOnce.js';
import type { RoundReading } from './roundReading.js';
import { reading } from './testing.js';

/** A reading; nobody waits after one of 90 or under. */
const at = (systolic: number, more: Partial<RoundReading> = {}) => ({
  ...reading({ systolic, ...more }),
  isNextAtOnce: systolic <= 90,
});
const LYING = { posture: 'lie' } as const;
const UP = { posture: 'stand' } as const;

// Bedside handbook 3.15: at once, by hand; that it is one repeat, at its place: common practice, no source.
describe('the repeat of a very low reading', () => {
  test.each([
    ['none was low', [at(128), at(124)], null],
    ['none came yet', [at(128), at(84)], null],
    ['it was low again', [at(84), at(78)], [84, 78]],
    ['it was not', [at(84), at(112)], [84, 112]],
    ['low again and once more, and then not', [at(84), at(86), at(112)], [84, 112]],
    ['low on the other arm, which repeats nothing', [at(84), at(86, { side: 'left' })], null],
    ['not low on the other arm, which repeats nothing either', [at(84), at(122, { side: 'left' })], null],
    ['on the other arm, and then at its place', [at(84), at(122, { side: 'left' }), at(118)], [84, 118]],
    ['sitting, then lying', [at(84), at(112, LYING)], [84, 112]],
    ['sitting, then standing', [at(84), at(112, UP)], null],
    ['on the feet, and not yet lying', [at(84, UP), at(86, UP)], null],
    ['on the feet, then lying and well', [at(84, UP), at(112, LYING)], [84, 112]],
    ['on the feet, then low lying', [at(84, UP), at(86, LYING)], null],
    ['on the feet, then low lying, twice', [at(84, UP), at(86, LYING), at(88, LYING)], [84, 88]],
  ])('%s', (_, readings, found) => {
    const [firstSystolic, againSystolic] = found ?? [];
    expect(repeatAtOnce(readings)).toEqual(found === null ? null : { firstSystolic, againSystolic });
  });

  test('is of the lowest where the person is unwell at each', () => {
    const readings = [78, 118, 120].map((systolic) => ({ ...at(systolic), isNextAtOnce: true }));
    expect(repeatAtOnce(readings)).toEqual({ firstSystolic: 78, againSystolic: 120 });
  });

  test('is said with the alert of a low pressure, and with no other', () => {
    const low = { condition: 'very-low-pressure', figures: { systolic: 84 } };
    const fast = { condition: 'very-fast-pulse', figures: { pulsePerMinute: 140 } };
    const repeat = { firstSystolic: 84, againSystolic: 86 };
    expect(alertsBeside([low, fast], null)).toEqual([low, fast]);
    expect(alertsBeside([low, fast], repeat)).toEqual([
      { ...low, figures: { systolic: 84, ...repeat } },
      fast,
    ]);
  });
});

// Bedside handbook 3.15: the times of a repeat, common practice.
describe('what is to be looked at again', () => {
  const codes = (of: 'abnormal' | 'very-low-or-unwell', without: string, repeat = null as never) =>
    rechecksBeside(
      recheckAfter(of, DEFAULT_RECHECK_RULES).filter(({ code }) => code !== without),
      repeat,
    ).map(({ code }) => code);

  test('speaks of a first repeat only until it is in the round', () => {
    expect(codes('abnormal', '')).toEqual(['recheck-abnormal-soon', 'recheck-abnormal-later']);
    expect(codes('abnormal', 'recheck-abnormal-soon')).toEqual(['recheck-abnormal-again']);
  });

  test('no longer asks at once for what was repeated at once', () => {
    const repeat = { firstSystolic: 84, againSystolic: 86 } as never;
    expect(codes('very-low-or-unwell', '')).toEqual(['recheck-at-once']);
    expect(codes('very-low-or-unwell', '', repeat)).toEqual(['recheck-repeated-at-once']);
  });
});
