import { type FieldShape, presetProtocol, SECTIONS } from '@evenfall/clinical';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { differencesOf } from './differences.js';
import { fieldMeaning, fieldName, wordText } from './protocolText.js';

const of = (presets: Record<string, string>) => {
  const read = presetProtocol(presets as never);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
};
const placesOf = (before: Record<string, string>, after: Record<string, string>) => {
  const { presets, fields } = differencesOf(of(before), of(after));
  return [...presets.map(({ section }) => section), ...fields.map(({ section, key }) => `${section}/${key}`)];
};

test('a set of rules stands once, and beside it the values that it changes', () => {
  expect(placesOf({ readings: 'esc-2024' }, { readings: 'ish-2020' })).toEqual([
    'readings',
    // ISH 2020 asks for no further reading by how far two lie apart (bedside handbook 3.10).
    'readings/difference',
  ]);
  expect(placesOf({}, { category: 'esh-2023' })).toEqual(['category', 'category/pregnancyScheme']);
  expect(placesOf({ category: 'esh-2023' }, {})).toEqual(['category', 'category/pregnancyScheme']);
  expect(placesOf({ cuff: 'aha-2005' }, { cuff: 'uk-arm-bands' })).toEqual(['cuff']);
});

test('a value that is changed by hand stands, whatever set of rules it is in', () => {
  const before = of({ readings: 'esc-2024' });
  const was = before.sections.readings;
  if (was === undefined) throw new Error('no readings');
  const readings = { ...was, rule: { ...was.rule, value: 'esh-2023' } };
  const after = { ...before, sections: { ...before.sections, readings } };
  const { presets, fields } = differencesOf(before, after as typeof before);
  expect([presets, fields.map(({ key }) => key)]).toEqual([[], ['rule']]);
});

test('between a protocol and itself nothing differs', () => {
  expect(placesOf({ category: 'esc-2024' }, { category: 'esc-2024' })).toEqual([]);
});

// A field is that of whichever guideline is in force: the id of one would be the wrong name under every other.
test.each(
  Object.entries(SECTIONS).flatMap(([section, { fields }]) =>
    Object.entries(fields).map(
      ([key, shape]) =>
        [`${section}/${key}`, fieldName(`${section}/${key}`, shape.unit, wordsFor('en-GB'))] as const,
    ),
  ),
)('%s is named in words', (_place, name) => {
  expect(name).not.toMatch(/\b[a-z]+(-[a-z]+)*-(\d{4}|ng136)\b/);
});

// What stands as a choice is a word of the language, never the code that is kept.
test.each(
  Object.entries(SECTIONS).flatMap(([section, { fields }]) =>
    Object.entries(fields as Readonly<Record<string, FieldShape>>).flatMap(([key, shape]) =>
      shape.kind === 'choice' || shape.kind === 'choices'
        ? shape.choices.map((one) => [`${section}/${key}`, String(one)] as const)
        : [],
    ),
  ),
)('%s: %s has a word of its own', async (place, choice) => {
  // The scales of saturation are called by their numbers.
  const isNumber = place === 'score/oxygenScale';
  expect(wordText(place, choice, await loadWords('es')) === choice).toBe(isNumber);
});

test.each(Object.entries(SECTIONS))('in %s no two limits go by one name', (section, { fields }) => {
  const names = Object.keys(fields)
    .filter((key) => /(Systolic|Diastolic)$/.test(key))
    .map((key) => fieldMeaning(`${section}/${key}`, wordsFor('en-GB')));
  expect(names).toEqual([...new Set(names)]);
  // Own values and refusals go by these words too: each says which of the two numbers it is.
  for (const name of names) expect(name).toMatch(/systolic|diastolic/i);
});
