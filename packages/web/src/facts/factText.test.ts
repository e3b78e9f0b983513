import { CUFF_SCHEMES, DEFAULT_CUFF_RULES, NEVER_FACTS } from '@evenfall/clinical';
import { FACT_NAMES, type FactContent } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { factText } from './factText.js';

const words = wordsFor('en-GB');
const RULES = DEFAULT_CUFF_RULES;
const DAY = '2026-03-05';
const since = (about: FactContent['about'], from = '2026-03-01', until: string | null = null) =>
  factText({ about, from, until, text: null }, DAY, RULES, words);

test.each<[FactContent['about'], string]>([
  // Bedside handbook 3.15: never an arm with a fistula, graft, shunt or drip; better the other with the rest.
  [{ fact: 'fistula', side: 'left' }, 'Left arm: fistula, since 1 Mar 2026 — never use this arm'],
  [{ fact: 'drip', side: 'right' }, 'Right arm: drip or line, since 1 Mar 2026 — never use this arm'],
  [{ fact: 'lymphoedema', side: 'left' }, 'Left arm: lymphoedema, since 1 Mar 2026 — better take the other arm'],
  [{ fact: 'lower-arm', side: 'left' }, 'Left arm: reads lower than the other, since 1 Mar 2026 — better take the other arm'],
  [{ fact: 'higher-arm', side: 'left' }, 'Left arm: reads higher than the other, since 1 Mar 2026 — take this arm'],
  // Bedside handbook 3.13: felt irregular, listen by hand.
  [{ fact: 'irregular-rhythm' }, 'Irregular pulse, since 1 Mar 2026 — count a full minute, listen by hand'],
  [{ fact: 'gap', fromMmHg: 186, toMmHg: 152 }, 'Gap in the sounds from 186 to 152 mmHg, since 1 Mar 2026 — feel first, pump up above the gap'],
  [{ fact: 'pacemaker' }, 'Pacemaker, since 1 Mar 2026'],
  [{ fact: 'pregnancy', weeks: null }, 'Pregnant, since 1 Mar 2026'],
  [{ fact: 'gave-birth' }, 'Gave birth, on 1 Mar 2026'],
  [{ fact: 'usual-cuff', scheme: 'aha-2005', cuff: 'large-adult' }, 'Usual cuff: Large adult, since 1 Mar 2026'],
  [{ fact: 'oxygen-scale-2', prescriber: 'Dr Example, invented' }, 'Saturation judged by scale 2, decided by Dr Example, invented, since 1 Mar 2026'],
  [{ fact: 'reference-sex', sex: 'f' }, 'Sex for reference tables: female, since 1 Mar 2026'],
])('%j', (about, text) => { expect(since(about)).toBe(text); }); // biome-ignore format: one line a fact

test('the weeks of a pregnancy are those of the day on which it is shown', () => {
  const weeks = (from: string) => since({ fact: 'pregnancy', weeks: 20 }, from).split(',')[1];
  // 26 February to 5 March is 7 days, one completed week; from the 27th it is 6 days.
  expect([weeks('2026-02-26'), weeks('2026-02-27')]).toEqual([' 21 weeks', ' 20 weeks']);
});

test('both days are said where an end is known', () => {
  expect(since({ fact: 'tremor' }, '2026-03-01', '2026-05-31')).toBe('Tremor, 1 Mar 2026 to 31 May 2026');
  expect(since({ fact: 'tremor' }, '2026-03-01', '2026-03-01')).toBe('Tremor, on 1 Mar 2026');
});

test('a place may bar more arms, and can free none that must never be used', () => {
  const said = (fact: 'weakness' | 'fistula', rules: Partial<typeof RULES>) =>
    factText({ about: { fact, side: 'left' }, from: DAY, until: null, text: null }, DAY, { ...RULES, ...rules }, words); // biome-ignore format: one thought
  expect(said('weakness', { neverFor: [...NEVER_FACTS, 'weakness'] })).toMatch(/never use this arm$/);
  expect(said('weakness', { preferOtherFor: [] })).not.toMatch(/arm$/);
  expect(said('fistula', { neverFor: [], preferOtherFor: ['fistula'] })).toMatch(/never use this arm$/);
});

test('every kind of fact has a name of its own, and every cuff', () => {
  for (const name of FACT_NAMES) expect(words.title('fact', name)).not.toBe(name);
  for (const { id } of CUFF_SCHEMES.flatMap(({ cuffs }) => cuffs))
    expect(words.title('cuff', id)).not.toBe(id);
});
