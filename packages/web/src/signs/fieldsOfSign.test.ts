import type { SignOf } from '@evenfall/clinical';
import { loadWords, USUAL_MANNER } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { fieldsOfSign } from './fieldsOfSign.js';
import { readTypedSign, typedNumberOf } from './typedSign.js';

const TARGET = { scale: 2, prescriber: 'Dr Larch (invented)' } as const;
const OTHER_UNITS = { ...USUAL_MANNER, temperature: '[degF]', length: '[in_i]', mass: '[lb_av]' } as const;
const SAID: readonly (readonly [SignOf, Record<string, string>])[] = [
  ['temperature', { celsius: '36.8', 'celsius.[degF]': '98.6', site: 'tympanic' }],
  ['oxygen-saturation', { percent: '97', breathes: 'air', probe: 'toe' }],
  [
    'oxygen-saturation',
    {
      percent: '91',
      breathes: 'oxygen',
      device: 'mask',
      litresPerMinute: '2.5',
      oxygenPercent: '28',
      pulsePerMinute: '88',
    },
  ],
  ['pain', { way: 'numeric', score: '0', moving: 'moving', where: 'left knee' }],
  ['pain', { way: 'visual-analogue', mm: '47' }],
  ['pain', { way: 'verbal', word: 'none', moving: 'resting' }],
  ['consciousness', { level: 'voice', eyes: '3', verbal: 'not-testable', motor: '6' }],
  ['consciousness', { level: 'alert' }],
  ['weight', { kg: '71.45', 'kg.[lb_av]': '157.3', how: 'stated' }],
  ['height', { cm: '52.5', 'cm.[in_i]': '20.75', how: 'measured', lying: 'yes' }],
];

// A sign that is opened again shows what was typed, whole: read once more it is the very same sign.
describe.each([
  ['en-GB', USUAL_MANNER],
  ['en-GB', OTHER_UNITS],
  ['es', USUAL_MANNER],
  ['es', OTHER_UNITS],
] as const)('a sign opened again, %s, %j', (language, manner) => {
  test.each(SAID)('%s %j', async (of, fields) => {
    const { say } = (await loadWords(language === 'es' ? 'es' : 'en', USUAL_MANNER)).inManner(manner);
    const typedBy = (text: Readonly<Record<string, string>>) => (field: string) => text[field] ?? '';
    const first = readTypedSign(of, typedBy(fields), TARGET, say);
    if (!first.ok) throw new Error(JSON.stringify(first.refusals));
    const typed = typedNumberOf(of, typedBy(fields), say);
    const again = fieldsOfSign({ sign: first.value, typed }, say);
    expect(readTypedSign(of, typedBy(again), TARGET, say)).toEqual(first);
    expect(typedNumberOf(of, typedBy(again), say)).toEqual(typed);
  });
});

// Source of the units: UCUM 2.1. Converted to and fro a number would move in its ninth decimal.
test.each([
  [USUAL_MANNER, OTHER_UNITS],
  [OTHER_UNITS, USUAL_MANNER],
])(
  'opened on a device whose user changed the unit since, %j and then %j, a number stays as it was typed',
  async (before, after) => {
    const words = await loadWords('en', USUAL_MANNER);
    const [first, later] = [words.inManner(before).say, words.inManner(after).say];
    const typedBy = (text: Readonly<Record<string, string>>) => (field: string) => text[field] ?? '';
    for (const [of, fields] of SAID.filter(([of]) => ['temperature', 'weight', 'height'].includes(of))) {
      const sign = readTypedSign(of, typedBy(fields), TARGET, first);
      if (!sign.ok) throw new Error(JSON.stringify(sign.refusals));
      const typed = typedNumberOf(of, typedBy(fields), first);
      const opened = fieldsOfSign({ sign: sign.value, typed }, later);
      expect(readTypedSign(of, typedBy(opened), TARGET, later)).toEqual(sign);
      expect(typedNumberOf(of, typedBy(opened), later)).toEqual(typed);
    }
  },
);
