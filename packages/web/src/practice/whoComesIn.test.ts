import { SCENARIOS } from '@evenfall/physiology';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { scenarioLesson, scenarioTitle } from './scenarioText.js';
import { MET, personName, seenText, settingOf } from './whoComesIn.js';

test('everybody of the book is met once, under a name of their own', () => {
  const met = MET.flatMap(({ ids }) => ids);
  expect(met.toSorted()).toEqual(SCENARIOS.map(({ id }) => id).toSorted());
  expect(new Set(SCENARIOS.map(personName)).size).toBe(SCENARIOS.length);
  expect(SCENARIOS.every((one) => settingOf(one) !== null)).toBe(true);
});

/** The words of a text that mean something by themselves. */
function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/\p{L}{4,}/gu) ?? [];
}

test.each(['en', 'es'])(
  '%s: what is said before gives nothing of title and lesson away',
  async (language) => {
    const words = await loadWords(language);
    for (const scenario of SCENARIOS) {
      const after = wordsOf(`${scenarioTitle(scenario, words)} ${scenarioLesson(scenario, words)}`);
      expect(wordsOf(personName(scenario)).filter((word) => after.includes(word))).toEqual([]);
      // Age, sex and place are what anybody sees who comes in; no place is that of one person alone.
      expect(seenText(scenario, words)).toContain(String(scenario.ageYears));
      const there = SCENARIOS.filter((one) => settingOf(one) === settingOf(scenario));
      expect(there.length).toBeGreaterThan(1);
    }
  },
);

test('somebody of the place comes in under the name that the place gave; with none, under one that stays theirs', () => {
  const own = { id: '0192f0c1-aaaa-7bbb-8ccc-000000000001', sex: 'f' as const };
  expect(personName(own)).toMatch(/^\p{L}+ \p{L}+$/u);
  expect(personName(own)).toBe(personName({ ...own }));
  expect(personName({ ...own, title: 'Loud ward' })).toBe('Loud ward');
  expect(personName({ id: 'tide', sex: 'm', title: 'Tide' })).toBe('Ernest Vail');
  expect(settingOf(own)).toBeNull();
});
