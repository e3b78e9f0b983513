import { expect, test } from 'vitest';
import { aside } from './english/aside.js';
import { bedside } from './english/bedside.js';
import { english } from './english/index.js';
import { later } from './english/later.js';
import { practice } from './english/practice.js';
import { round } from './english/round.js';
import { everyText } from './everyText.js';
import { sayIn } from './say.js';
import { wordsFor } from './words.js';
import { wordsInParts } from './wordsInParts.js';

const keysOf = (part: object) => everyText(part, 2, sayIn('en')).map(([key]) => key);

test('every text stands in one part, and all parts are the whole', () => {
  const keys = [bedside, round, aside, later, practice].flatMap(keysOf);
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  expect(keys.sort()).toEqual(keysOf(english).sort());
  expect(keysOf(round).length).toBeGreaterThan(100);
  expect(keysOf(later).length).toBeGreaterThan(100);
});

test('the bedside is said at once, later pages once their words were brought, by words that were there before', async () => {
  const parts = wordsInParts();
  const words = parts.english('en-GB');
  expect(words.say.locale).toBe('en-GB');
  expect(words.sentence('app.pulse')).toBe(wordsFor('en').sentence('app.pulse'));
  expect(() => words.sentence('chart.print')).toThrow('chart.print');
  const other = words.inManner({ temperature: '[degF]' });
  await parts.bring('later');
  const whole = wordsFor('en');
  for (const one of [words, other, await parts.load('en-GB'), parts.english('de')]) {
    expect(one.sentence('chart.print')).toBe(whole.sentence('chart.print'));
    // Of one screen in two parts both are there.
    expect(one.sentence('equipment.title')).toBe(whole.sentence('equipment.title'));
    expect(one.sentence('equipment.link')).toBe(whole.sentence('equipment.link'));
    expect(() => one.sentence('prepare.title')).toThrow('prepare.title');
    expect(one.title('home', 'esh-2023')).toBe(whole.title('home', 'esh-2023'));
    expect(one.title('mark', 'first-sound')).toBe(whole.title('mark', 'first-sound'));
  }
});

test('of a screen in three parts each comes with its own', async () => {
  const parts = wordsInParts();
  const words = parts.english('en');
  expect(() => words.sentence('amend.reasonMissing')).toThrow('amend.reasonMissing');
  await parts.bring('round');
  expect(words.sentence('amend.reasonMissing')).toMatch(/\w/);
  expect(() => words.sentence('chart.print')).toThrow('chart.print');
  await Promise.all([parts.bring('later'), parts.bring('round')]);
  expect(words.sentence('chart.title')).toMatch(/\w/);
  expect(words.sentence('chart.print')).toMatch(/\w/);
});

test('what a kept sign brings is said with the words of a round, what taps bring with those of what stands aside', async () => {
  const parts = wordsInParts();
  const words = parts.english('en');
  const fever = { code: 'fever', figures: { celsius: 38.5, limitCelsius: 38 } };
  expect(words.detail(fever)).toMatch(/fever\W*$|“fever”/);
  await parts.bring('round');
  expect(words.detail(fever)).toBe(wordsFor('en').detail(fever));
  const paused = { code: 'tapping-paused', figures: { seconds: 6, afterTap: 4 } };
  await parts.bring('aside');
  expect(words.detail(paused)).toBe(wordsFor('en').detail(paused));
});

test('a language that is chosen after later pages were brought says them too', async () => {
  const parts = wordsInParts();
  await parts.load('en');
  await parts.bring('later');
  expect((await parts.load('es')).sentence('chart.print')).toBe('Imprimir este registro');
});

test('the later part of a language is its own, also where it is asked for while the language is on its way', async () => {
  const parts = wordsInParts();
  const [spanish] = await Promise.all([parts.load('es-ES'), parts.bring('later')]);
  expect(spanish.sentence('app.pulse')).toBe('Pulso');
  expect(spanish.sentence('chart.print')).toBe('Imprimir este registro');
  // A language without a catalogue is English.
  expect((await parts.load('de')).sentence('app.pulse')).toBe('Pulse');
});
