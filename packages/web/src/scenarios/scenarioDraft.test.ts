import { BLANK, PHYSIOLOGY_FIGURES, SCENARIO_LIMITS, SCENARIOS, type Scenario } from '@evenfall/physiology';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { foundBesides } from '../practice/begin.js';
import { copyOf, draftOf, fieldOf, jsonOfDraft, readDraft, textOfSeveral } from './scenarioDraft.js';
import { SCENARIO_FIELDS } from './scenarioFields.js';

const formed = (scenario: Scenario, more: Record<string, string> = {}) => {
  const draft: Record<string, string> = {
    ...draftOf(scenario),
    title: 'Ours (invented)',
    id: 'ours',
    ...more,
  };
  return readDraft(jsonOfDraft((path) => draft[path] ?? ''));
};
const wrongIn = (more: Record<string, string>, scenario: Scenario = BLANK) =>
  formed(scenario, more).refusals.map((one) => fieldOf(one));

test.each(SCENARIOS.map((one) => [one.id, one] as const))(
  '%s goes through the form unchanged but for its name',
  (_, scenario) => {
    expect(formed(scenario)).toEqual({
      scenario: { ...scenario, title: 'Ours (invented)', id: 'ours' },
      refusals: [],
    });
  },
);

test('every field of the form is one of a scenario, and every number, choice and yes of one is in the form', () => {
  const paths = (value: object, before = ''): string[] =>
    Object.entries(value).flatMap(([key, one]) =>
      one !== null && typeof one === 'object' && !Array.isArray(one)
        ? paths(one, `${before}${key}/`)
        : [`${before}${key}`],
    );
  const whole: Scenario = {
    ...BLANK,
    gap: { topMmHg: 110, bottomMmHg: 90 },
    home: { systolic: 1, diastolic: 1 },
    leftArm: { systolic: 1, diastolic: 1 },
    standing: {
      oneMinute: { systolic: 1, diastolic: 1 },
      threeMinutes: { systolic: 1, diastolic: 1 },
      pulsePerMinute: 1,
    },
    instrument: { zeroOffsetMmHg: 0, leakMmHgPerMinute: 0 },
    preparation: foundBesides(1),
    report: ['gap'],
  };
  const inForm = SCENARIO_FIELDS.map(({ path }) => path);
  expect(
    paths(whole)
      .filter((path) => path !== 'schema')
      .sort(),
  ).toEqual(inForm.toSorted());
});

test('what is wrong is named by its field, at the limit taken and beyond it refused', () => {
  const [low, high] = SCENARIO_LIMITS.systolic;
  expect(wrongIn({ systolic: String(high) })).toEqual([]);
  expect(wrongIn({ systolic: `${high}.1` })).toEqual(['systolic']);
  expect(wrongIn({ systolic: String(low), diastolic: '25' })).toEqual([]);
  expect(wrongIn({ systolic: `${low - 1}`, diastolic: '25' })).toEqual(['systolic']);
  expect(wrongIn({ systolic: 'high' })).toEqual(['systolic']);
  expect(wrongIn({ 'gap/topMmHg': '110', 'gap/bottomMmHg': '109' })).toEqual([]);
  expect(wrongIn({ 'gap/topMmHg': '110', 'gap/bottomMmHg': '110' })).toEqual(['gap/bottomMmHg']);
  expect(wrongIn({ 'rhythm/kind': 'alternans' })).toEqual(['rhythm/alternansMmHg']);
  expect(wrongIn({ 'standing/pulsePerMinute': '80' })).toEqual([
    'standing/oneMinute/systolic',
    'standing/threeMinutes/systolic',
  ]);
});

test('what a good observer reports is kept in its order, and what is wrong in it is named at its place', () => {
  const text = textOfSeveral(['gap', 'palpated-systolic']);
  expect(formed(BLANK, { report: text }).scenario?.report).toEqual(['gap', 'palpated-systolic']);
  expect(formed(BLANK, { report: '' }).scenario).not.toHaveProperty('report');
  const { refusals } = formed(BLANK, { report: 'gap palpated-systolic gap of-no-list' });
  expect(refusals.map(({ field, code }) => [field, code])).toEqual([
    ['/report/2', 'repeated'],
    ['/report/3', 'unknown-id'],
  ]);
  expect(refusals.map(fieldOf)).toEqual(['report', 'report']);
});

test('it has a name, and an id that no built-in one has', () => {
  expect(wrongIn({ title: ' ' })).toEqual(['title']);
  expect(wrongIn({ id: 'quiet-morning' })).toEqual(['id']);
  expect(wrongIn({ id: 'Not an id' })).toEqual(['id']);
  expect(copyOf(SCENARIOS[0] as Scenario)).toMatchObject({ title: '', id: '' });
});

test('a comma is a decimal point, and nothing else is guessed', () => {
  expect(formed(BLANK, { armCm: '29,5' }).scenario?.armCm).toBe(29.5);
  expect(wrongIn({ armCm: '2 9' })).toEqual(['armCm']);
  expect(wrongIn({ armCm: '' })).toEqual(['armCm']);
});

// What the form says of a blank is what the model takes for it (physiology handbook 11 for the noise that hides sounds).
test('the numbers that a blank is said to stand for are those of the model', () => {
  const say = wordsFor('en').sentence;
  const { quieterDbA, noiseFromDbA } = PHYSIOLOGY_FIGURES.sound;
  const [quiet, less, lost, above] = [
    BLANK.noiseDbA,
    quieterDbA.value,
    noiseFromDbA.value,
    noiseFromDbA.value + quieterDbA.value,
  ];
  expect(say('scenarioForm.blank-quietRoom')).toMatch(
    new RegExp(`blank: ${quiet}, .* takes ${less} off, .* over ${lost} .* above ${above} `),
  );
  expect(say('scenarioForm.blank-five')).toContain(` ${BLANK.acceptedWithinMmHg}`);
});

test('without a name that alone is missing: the id is made of it', () => {
  const wrong = wrongIn({ title: '', id: '' });
  expect(wrong).toEqual(['title']);
  expect(wrongIn({ id: '' })).toEqual(['id']);
});
