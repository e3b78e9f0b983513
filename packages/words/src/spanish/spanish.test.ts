import { describe, expect, test } from 'vitest';
import { english } from '../english/index.js';
import { everyText } from '../everyText.js';
import type { Reworded } from '../reworded.js';
import { sayIn } from '../say.js';
import { spanish } from './index.js';

const say = sayIn('es');
const NUMBERS = [0, 1, 2, 7.5, 1234];

/** Texts of Spanish that are English on purpose: names, ids, what is typed, units, titles of guidelines. */
const SAME = [
  /^sections\.(app\.perMinute|reach\.trustFile|chart\.rmssd|signIn\.pin(Title)?)$/,
  /^titles\.guideline\./,
  // Words that the two languages share.
  /^sections\.(count\.(regular|irregular|normal)|quick\.rhythm-(regular|irregular)|counts\.normal|protocol\.no|result\.notPregnant|chart\.disagree)$/,
  /^titles\.(rhythm\.regular|category\.normal|homeCategory\.normal|strength\.normal)$/,
];

test('it has the keys of English, no more and no fewer', () => {
  const keys = (catalogue: object) => everyText(catalogue, 2, say).map(([key]) => key).sort(); // biome-ignore format: one thought
  expect(keys(spanish)).toEqual(keys(english));
});

test('a sentence too few or too many does not compile', () => {
  const two = { one: 'One', other: (f: { text: string }) => `${f.text}!` } as const;
  const whole: Reworded<typeof two> = { one: 'Uno', other: (f) => `¡${f.text}!` };
  // @ts-expect-error one is missing
  const few: Reworded<typeof two> = { one: 'Uno' };
  // @ts-expect-error one is superfluous
  const many: Reworded<typeof two> = { ...whole, third: 'Tres' };
  // @ts-expect-error other figures than English has
  const other: Reworded<typeof two> = { one: 'Uno', other: (f: { number: number }) => `${f.number}` };
  expect([whole, few, many, other]).toHaveLength(4);
});

/** The commonest words of English that Spanish does not have, and the nouns of this trade. */
const ENGLISH =
  /(?<!\p{L})(the|of|and|with|for|not|this|that|was|were|is|are|by|from|your|person|readings?|round|cuff|breaths?|beats?|count|minutes?|seconds?|sign|signed|heart|blood|pressure|arm|taken|look|chart|which|what|when|here|there|must)(?!\p{L})/iu;

describe.each(NUMBERS)('every text, said of %d', (number) => {
  const texts = everyText(spanish, number, say);

  test('says something, and nothing that is not there', () => {
    for (const [key, text] of texts) {
      expect(text, key).not.toBe('');
      expect(text, key).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
    }
  });

  test('leaves no English word', () => {
    const left = texts.filter(([, text]) => ENGLISH.test(text.replace(QUOTED, '')));
    expect(left).toEqual([]);
  });

  test('counts nouns rightly', () => {
    for (const [key, text] of texts) {
      const one =
        /(?<![\d,])1 (latidos|respiraciones|toques|intervalos|segundos|lecturas|rondas|semanas|personas)\b/;
      expect(text, key).not.toMatch(one);
      if (number !== 1)
        expect(text, key).not.toMatch(
          /\d (latido|respiración|toque|intervalo|segundo|lectura|ronda|semana|persona)\b/,
        );
    }
  });

  test('names no arrhythmia and makes no diagnosis', () => {
    // As of English. DESIGN section 2, principle 8; bedside handbook 1.11, 1.12 and 7.5.
    const names =
      /fibrilación|flúter|aleteo|arritmia|disritmia|bigemin|trigemin|extrasístole|taquicardia|bradicardia|bloqueo cardiaco|\bFA\b|\bsinusal\b|pulso normal|padece/i;
    for (const [key, text] of texts) {
      expect(text, key).not.toMatch(names);
      expect(text.replace('No diagnostica', ''), key).not.toMatch(/diagn[oó]s/i);
    }
  });

  test('writes numbers with a decimal comma', () => {
    const ofFigures = texts.filter(([key, text]) => key.startsWith('details.') && /7[.,]5/.test(text));
    expect(ofFigures.filter(([, text]) => /7\.5/.test(text))).toEqual([]);
    expect(ofFigures.length > 0).toBe(number === 7.5);
  });
});

/** What a person types or reads as it is: options, commands, program names, a title. */
const QUOTED =
  /\{[a-zA-Z]+\}|evenfall-chart|--[a-z-]+|\bevenfall [a-z]+|\b(true|false|owner|clinician|supervisor|learner|any|pulse|care|csv|confusion|root|npm start|npm run build)\b|account add[^:;]*owner|Royal College of Physicians|Hypertension Canada/g;

const UNITS = /\b(Evenfall|kg|cm|min|mmHg|ms)\b/g;

test('no text was left as English has it', () => {
  const of = new Map(everyText(english, 2, say));
  const same = everyText(spanish, 2, say).filter(
    ([key, text]) =>
      of.get(key) === text && /[a-z]{2}/i.test(text.replace(UNITS, '')) && !SAME.some((one) => one.test(key)),
  );
  expect(same).toEqual([]);
});
