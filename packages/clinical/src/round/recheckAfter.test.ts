import { describe, expect, test } from 'vitest';
import { DEFAULT_ACT_NOW_RULES } from './actNowRules.js';
import { type KnownSigns, NOTHING_KNOWN } from './knownSigns.js';
import { RECHECK_CLASSES, type RecheckClass, recheckAfter } from './recheckAfter.js';
import { recheckClass } from './recheckClass.js';
import { DEFAULT_RECHECK_RULES as RULES } from './recheckRules.js';

describe('when to look again', () => {
  // Bedside handbook 3.15 (1 to 2 min second-hand, 10 to 15 min and at once common practice) and 3.16 (from memory).
  test.each<[RecheckClass, [number, number | null][]]>([
    ['very-low-or-unwell', [[0, 60]]],
    ['severe-in-pregnancy', [[0, 15 * 60]]],
    ['severe', [[5 * 60, null]]],
    ['abnormal', [[60, 120], [10 * 60, 15 * 60]]], // biome-ignore format: one thought
  ])('%s', (one, delays) => {
    const due = recheckAfter(one, RULES).map(({ fromSeconds, withinSeconds }) => [
      fromSeconds,
      withinSeconds,
    ]);
    expect(due).toEqual(delays);
  });

  test('each delay is the place’s own, and each repeat says what for', () => {
    const local = {
      ...RULES,
      severeRestSeconds: 600,
      pregnancyWithinSeconds: 300,
      abnormalLaterSeconds: 720,
    };
    expect(recheckAfter('severe', local)[0]?.fromSeconds).toBe(600);
    expect(recheckAfter('severe-in-pregnancy', local)[0]?.withinSeconds).toBe(300);
    expect(recheckAfter('abnormal', local)[1]?.fromSeconds).toBe(720);
    const codes = RECHECK_CLASSES.flatMap((one) => recheckAfter(one, RULES).map(({ code }) => code));
    expect(new Set(codes).size).toBe(codes.length);
  });
});

describe('whose repeats are due', () => {
  const nothing = { unwell: null, abnormal: null };
  const classOf = (known: Partial<KnownSigns>, more: Partial<Parameters<typeof recheckClass>[1]> = {}) =>
    recheckClass({ ...NOTHING_KNOWN, ...known }, { ...nothing, ...more }, DEFAULT_ACT_NOW_RULES);

  // Bedside handbook 3.16 and 3.17, at and on both sides of each limit.
  test.each<[Partial<KnownSigns>, RecheckClass | null]>([
    [{ systolic: 90, diastolic: 60 }, 'very-low-or-unwell'],
    [{ systolic: 91, diastolic: 60 }, null],
    [{ systolic: 77, ageMonths: 48 }, 'very-low-or-unwell'], // C075
    [{ systolic: 78, ageMonths: 48 }, null],
    [{ systolic: 180, diastolic: 100 }, 'severe'], // C071
    [{ systolic: 178, diastolic: 120 }, 'severe'], // C071
    [{ systolic: 179, diastolic: 119 }, null],
    [{ systolic: 160, diastolic: 100, pregnant: true }, 'severe-in-pregnancy'], // C074
    [{ systolic: 159, diastolic: 109, pregnant: true }, null],
    [{ systolic: 159, diastolic: 110, weeksAfterBirth: 6 }, 'severe-in-pregnancy'],
    [{ systolic: 184, diastolic: 124, pregnant: true }, 'severe-in-pregnancy'],
    [{ systolic: 184, diastolic: 124, features: ['fit'] }, 'very-low-or-unwell'],
    [{ systolic: 141, diastolic: 70, ageMonths: 60, p95: { systolic: 110, diastolic: 70 } }, 'severe'],
    [{ systolic: 140, diastolic: 70, ageMonths: 60, p95: { systolic: 110, diastolic: 70 } }, null],
    [{}, null],
  ])('%j', (known, expected) => {
    expect(classOf(known)).toBe(expected);
  });

  test('unwell comes before anything, abnormal after everything, and neither is assumed', () => {
    expect(classOf({ systolic: 184 }, { unwell: true, abnormal: true })).toBe('very-low-or-unwell');
    expect(classOf({ systolic: 184 }, { abnormal: true })).toBe('severe');
    expect(classOf({ systolic: 150 }, { abnormal: true })).toBe('abnormal');
    expect(classOf({ systolic: 150 }, { unwell: false, abnormal: false })).toBeNull();
  });

  test('a limit holds for the repeat even where its alert is switched off', () => {
    const quiet = { ...DEFAULT_ACT_NOW_RULES, switchedOff: ['very-low-pressure'] as const };
    expect(recheckClass({ ...NOTHING_KNOWN, systolic: 84 }, nothing, quiet)).toBe('very-low-or-unwell');
  });
});
