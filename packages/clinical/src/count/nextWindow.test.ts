import { expect, test } from 'vitest';
import { type Circumstances, UNKNOWN_CIRCUMSTANCES } from './circumstances.js';
import type { Count } from './count.js';
import { nextWindow } from './nextWindow.js';
import { type CountRules, DEFAULT_COUNT_RULES } from './rules.js';

type Case = { count?: Partial<Count>; circumstances?: Partial<Circumstances>; rules?: Partial<CountRules> };

/** `60 code code` for what is asked for; `stands` if nothing is. */
function asked({ count = {}, circumstances = {}, rules = {} }: Case): string {
  const { nextWindowSeconds, why } = nextWindow(
    { of: 'pulse', n: 38, windowSeconds: 30, clock: 'any', first: 1, ...count },
    { ...UNKNOWN_CIRCUMSTANCES, ...circumstances },
    { ...DEFAULT_COUNT_RULES, ...rules },
  );
  if (nextWindowSeconds === null && why.length === 0) return 'stands';
  return [nextWindowSeconds, ...why.map(({ code }) => code)].join(' ');
}

test('a regular pulse of 76 in 30 s stands', () => {
  expect(asked({})).toBe('stands');
});

test('C008: 108 from 15 s asks for a longer count', () => {
  // Bedside handbook 8, C008 (found, Hollerbach 1990; common practice).
  const count = { n: 27, windowSeconds: 15 };
  expect(asked({ count })).toBe('60 fast-for-window fast-on-short-count');
  expect(asked({ count, rules: { fullMinuteWhenSlowOrFast: false } })).toBe('30 fast-for-window');
});

test('a barred window never asks for more than the full minute', () => {
  const count = { n: 27, windowSeconds: 15 };
  const rules = { pulseWindowsSeconds: [15, 300], fullMinuteWhenSlowOrFast: false };
  expect(asked({ count, rules })).toBe('60 fast-for-window');
});

test('what was found of 15 s and what custom asks of any short count are two limits', () => {
  // Hollerbach 1990 bars 15 s above 100 a minute; the full minute is practice (bedside handbook 1.5).
  const count = { n: 27, windowSeconds: 15 };
  expect(asked({ count, rules: { fastPerMinute: 120 } })).toBe('30 fast-for-window');
  expect(asked({ count, rules: { barredAbovePerMinute: 120 } })).toBe('60 fast-on-short-count');
});

test('C009: an irregular rhythm in 30 s asks for 60 s', () => {
  // Bedside handbook 8, C009 (common practice, no source); the apex is a flag of the result.
  expect(asked({ circumstances: { rhythmFelt: 'irregular' } })).toBe('60 irregular');
});

test.each<[string, Case, string]>([
  // Bedside handbook 1.5, row by row, each limit on both sides.
  ['below 60', { count: { n: 29 } }, '60 slow-on-short-count'],
  ['60 itself', { count: { n: 30 } }, 'stands'],
  ['100 itself', { count: { n: 50 } }, 'stands'],
  ['100 itself in 15 s', { count: { n: 25, windowSeconds: 15 } }, 'stands'],
  ['above 100', { count: { n: 51 } }, '60 fast-on-short-count'],
  ['weak', { circumstances: { strength: 'weak' } }, '60 weak'],
  ['strong', { circumstances: { strength: 'strong' } }, 'stands'],
  ['first set', { circumstances: { firstOnPerson: true } }, '60 first-set'],
  ['not the first set', { circumstances: { firstOnPerson: false } }, 'stands'],
  ['23 months', { circumstances: { ageMonths: 23 } }, '60 young'],
  ['24 months', { circumstances: { ageMonths: 24 } }, 'stands'],
  ['apical', { circumstances: { site: 'apical' } }, '60 apical'],
  ['heart-rate drug', { circumstances: { heartRateDrug: true } }, '60 heart-rate-drug'],
  ['previous 10 lower', { circumstances: { previousPerMinute: 66 } }, 'stands'],
  ['a device 11 lower', { circumstances: { devicePerMinute: 65 } }, '60 disagrees'],
  ['a device 10 lower', { circumstances: { devicePerMinute: 66 } }, 'stands'],
  ['previous 11 lower', { circumstances: { previousPerMinute: 65 } }, '60 disagrees'],
  ['previous 11 higher', { circumstances: { previousPerMinute: 87 } }, '60 disagrees'],
  // Bedside handbook 2.1 and 2.2: breaths for a full minute; 30 s only if regular and allowed locally.
  ['breaths 30 s', { count: { of: 'breaths', n: 8 } }, '60 breaths-full-minute'],
  // 1.5 is about the pulse: a difference of 11 says nothing of breaths.
  [
    'breaths unlike before',
    {
      count: { of: 'breaths', n: 8 },
      circumstances: { previousPerMinute: 27, rhythmFelt: 'regular' },
      rules: { breathsShortAllowed: true },
    },
    'stands',
  ],
  ['breaths 60 s', { count: { of: 'breaths', n: 16, windowSeconds: 60 } }, 'stands'],
])('%s: %j', (_what, input, expected) => {
  expect(asked(input)).toBe(expected);
});

test('breaths in 30 s stand only if they are regular and the protocol allows it', () => {
  const count: Partial<Count> = { of: 'breaths', n: 8 };
  const rules = { breathsShortAllowed: true };
  expect(asked({ count, rules, circumstances: { rhythmFelt: 'regular' } })).toBe('stands');
  expect(asked({ count, rules })).toBe('60 breaths-full-minute');
  expect(asked({ count, rules, circumstances: { rhythmFelt: 'irregular' } })).toBe('60 breaths-full-minute');
  expect(asked({ count, circumstances: { rhythmFelt: 'regular' } })).toBe('60 breaths-full-minute');
  expect(
    asked({ count: { ...count, windowSeconds: 15 }, rules, circumstances: { rhythmFelt: 'regular' } }),
  ).toBe('60 breaths-full-minute');
  expect(asked({ count, rules, circumstances: { rhythmFelt: 'regular', firstOnPerson: true } })).toBe(
    '60 first-set',
  );
});

/** Everything at once that asks for a full minute. */
const EVERYTHING: Circumstances = {
  rhythmFelt: 'irregular',
  strength: 'weak',
  firstOnPerson: true,
  ageMonths: 3,
  site: 'apical',
  heartRateDrug: true,
  previousPerMinute: 60,
};

test('a full minute stands, whatever is known', () => {
  expect(asked({ count: { n: 140, windowSeconds: 60 }, circumstances: EVERYTHING })).toBe('stands');
  expect(asked({ count: { n: 280, windowSeconds: 120 }, circumstances: EVERYTHING })).toBe('stands');
});

test('every reason is told, not only the first', () => {
  const circumstances = { rhythmFelt: 'irregular', firstOnPerson: true, previousPerMinute: 60 } as const;
  expect(asked({ count: { n: 60 }, circumstances })).toBe(
    '60 fast-on-short-count irregular first-set disagrees',
  );
});

test('each full-minute rule can be switched off by the protocol', () => {
  const off = {
    fullMinuteWhenIrregular: false,
    fullMinuteWhenWeak: false,
    fullMinuteWhenFirstOnPerson: false,
  };
  const more = {
    fullMinuteWhenYoung: false,
    fullMinuteWhenApical: false,
    fullMinuteWhenHeartRateDrug: false,
  };
  expect(
    asked({ circumstances: EVERYTHING, rules: { ...off, ...more, fullMinuteWhenDisagreeing: false } }),
  ).toBe('stands');
});

test('nothing counted asks for no window: the person comes first', () => {
  const result = nextWindow(
    { of: 'pulse', n: 0, windowSeconds: 15, clock: 'any', first: 1 },
    { ...UNKNOWN_CIRCUMSTANCES, firstOnPerson: true },
    DEFAULT_COUNT_RULES,
  );
  expect(result).toEqual({
    nextWindowSeconds: null,
    why: [{ code: 'none-counted', figures: { windowSeconds: 15 } }],
  });
});
