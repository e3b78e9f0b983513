import { expect, test } from 'vitest';
import { bedside } from './english/bedside.js';
import { english } from './english/index.js';
import { later } from './english/later.js';
import { everyText } from './everyText.js';
import { sayIn } from './say.js';
import { wordsFor } from './words.js';
import { wordsInParts } from './wordsInParts.js';

const keysOf = (part: object) => everyText(part, 2, sayIn('en')).map(([key]) => key);

test('every text stands in one part, and both parts are the whole', () => {
  const [first, second] = [keysOf(bedside), keysOf(later)];
  expect(second.filter((key) => first.includes(key))).toEqual([]);
  expect([...first, ...second].sort()).toEqual(keysOf(english).sort());
  expect(second.length).toBeGreaterThan(100);
});

test('the bedside is said at once, later pages once their words were brought, by words that were there before', async () => {
  const parts = wordsInParts();
  const words = parts.english('en-GB');
  expect(words.say.locale).toBe('en-GB');
  expect(words.sentence('app.pulse')).toBe(wordsFor('en').sentence('app.pulse'));
  expect(() => words.sentence('chart.print')).toThrow('chart.print');
  const other = words.inManner({ temperature: '[degF]' });
  await parts.bringLater();
  const whole = wordsFor('en');
  for (const one of [words, other, await parts.load('en-GB'), parts.english('de')]) {
    expect(one.sentence('chart.print')).toBe(whole.sentence('chart.print'));
    // Of one screen in two parts both are there.
    expect(one.sentence('chart.title')).toBe(whole.sentence('chart.title'));
    expect(one.title('home', 'esh-2023')).toBe(whole.title('home', 'esh-2023'));
    expect(one.title('mark', 'first-sound')).toBe(whole.title('mark', 'first-sound'));
  }
});

test('a language that is chosen after later pages were brought says them too', async () => {
  const parts = wordsInParts();
  await parts.load('en');
  await parts.bringLater();
  expect((await parts.load('es')).sentence('chart.print')).toBe('Imprimir este registro');
});

test('the later part of a language is its own, also where it is asked for while the language is on its way', async () => {
  const parts = wordsInParts();
  const [spanish] = await Promise.all([parts.load('es-ES'), parts.bringLater()]);
  expect(spanish.sentence('app.pulse')).toBe('Pulso');
  expect(spanish.sentence('chart.print')).toBe('Imprimir este registro');
  // A language without a catalogue is English.
  expect((await parts.load('de')).sentence('app.pulse')).toBe('Pulse');
});
