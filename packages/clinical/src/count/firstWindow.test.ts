import { expect, test } from 'vitest';
import { type Circumstances, UNKNOWN_CIRCUMSTANCES } from './circumstances.js';
import type { CountOf } from './count.js';
import { firstWindow } from './firstWindow.js';
import { type CountRules, DEFAULT_COUNT_RULES } from './rules.js';

type Known = {
  of?: CountOf;
  circumstances?: Partial<Circumstances>;
  irregular?: boolean;
  rules?: Partial<CountRules>;
};

/** `60 code code` for what is offered and why. */
function offered({ of = 'pulse', circumstances = {}, irregular = false, rules = {} }: Known): string {
  const known = { ...UNKNOWN_CIRCUMSTANCES, ...circumstances };
  const { windowSeconds, why } = firstWindow(of, known, irregular, { ...DEFAULT_COUNT_RULES, ...rules });
  return [windowSeconds, ...why.map(({ code }) => code)].join(' ');
}

// Bedside handbook 1.5, row by row: what is known before the count (common practice; young children from memory).
test.each<[string, Known, string]>([
  ['nothing known', {}, '30'],
  ['nothing known, the place counts 15 s', { rules: { pulseWindowSeconds: 15 } }, '15'],
  ['a rhythm known to be irregular', { irregular: true }, '60 irregular-known'],
  ['the first set', { circumstances: { firstOnPerson: true } }, '60 first-set'],
  ['not the first set', { circumstances: { firstOnPerson: false } }, '30'],
  ['23.9 months', { circumstances: { ageMonths: 23.9 } }, '60 young'],
  ['24 months', { circumstances: { ageMonths: 24 } }, '30'],
  ['at the apex', { circumstances: { site: 'apical' } }, '60 apical'],
  ['a drug acting on the heart rate', { circumstances: { heartRateDrug: true } }, '60 heart-rate-drug'],
  ['felt irregular before', { circumstances: { rhythmFelt: 'irregular' } }, '60 irregular'],
  ['felt regular before', { circumstances: { rhythmFelt: 'regular' } }, '30'],
  ['several', { irregular: true, circumstances: { firstOnPerson: true } }, '60 irregular-known first-set'],
  ['a place that asks for none of it', { irregular: true, rules: { fullMinuteWhenIrregular: false } }, '30'],
  [
    'a place whose usual window is the full minute',
    { irregular: true, rules: { pulseWindowSeconds: 60 } },
    '60',
  ],
  ['breaths of somebody with an irregular pulse', { of: 'breaths', irregular: true }, '60'],
  [
    'breaths of a first set where short ones are the rule',
    { of: 'breaths', circumstances: { firstOnPerson: true }, rules: { breathsWindowSeconds: 30 } },
    '60 first-set',
  ],
])('%s', (_, known, expected) => {
  expect(offered(known)).toBe(expected);
});
