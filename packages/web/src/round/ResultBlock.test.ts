import { NO_ROUND_NOTES } from '@evenfall/clinical';
import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { resultLines } from './ResultBlock.js';

const words = wordsFor('en-GB');
const spanish = await loadWords('es');
const BY_LAST = /last reading alone/;
const BY_LAST_ES = /última lectura/;

function categoryLine(systolic: string, more: object = {}): string {
  const category = {
    ...{ category: 'normal', atLeast: 'normal', guideline: 'acc-aha-2017', highestOf: 1 },
    ...{ shown: { systolic, diastolic: '58' }, flags: [], why: [] },
  };
  const earlyWarning = { parts: {}, total: null, atLeast: 3, missing: [], response: null, flags: [] };
  const none = {
    pressure: null,
    meanPressureMmHg: null,
    pulsePressureMmHg: null,
    arms: null,
    standing: null,
  };
  const value = { ...none, scores: [], rechecks: [], actNow: [], category, earlyWarning, ...more };
  const line = resultLines(value as never, words).find(({ name }) => name === 'Category');
  return line?.text ?? '';
}

// Bedside handbook 3.15: beside a low pressure nobody is told to let the arm rest and take another sitting.
test('an average that is not there says of a low pressure that there were too few, and asks for none', () => {
  const needs = [{ code: 'more-readings', figures: { readings: 1, needs: 2 } }];
  const pressure = {
    ...{ systolic: null, diastolic: null, used: [], flags: [], needs },
    why: [{ code: 'too-few', figures: { readings: 1, needs: 2 } }],
  };
  const none = { meanPressureMmHg: null, pulsePressureMmHg: null, earlyWarning: null, category: null };
  const codes = (actNow: readonly object[]) =>
    resultLines(
      { ...none, pressure, arms: null, standing: null, scores: [], rechecks: [], actNow } as never,
      words,
    )[0]?.flags.map(({ code }) => code);
  expect(codes([])).toEqual(['more-readings']);
  expect(codes([{ condition: 'very-low-pressure' }])).toEqual(['too-few']);
});

// Royal College of Physicians 2017: a systolic of 92 scores 2, one of 118 none.
test('beside a low pressure a category says that it speaks of high ones alone', () => {
  expect(categoryLine('92')).toMatch(/“Normal”.* A category speaks of high pressure alone/);
  expect(categoryLine('118')).not.toContain('high pressure alone');
  // Of a child, or in pregnancy, there is no such score.
  expect(categoryLine('92', { earlyWarning: null })).not.toContain('high pressure alone');
});

// Bedside handbook 3.17: a systolic of 90 or under is very low.
test('beside a pressure under the low limit no category is named at all', () => {
  const text = categoryLine('84', {
    actNow: [{ condition: 'very-low-pressure', figures: { systolic: 84, veryLowSystolic: 90 } }],
  });
  expect(text).toBe('None is named: the categories are of high pressure, and this one is low.');
});

test('a score of which signs are missing is not read as a zero', () => {
  const text = (atLeast: number, missing: readonly string[]) => {
    const earlyWarning = { parts: {}, total: null, atLeast, missing, response: null, flags: [] };
    const none = { category: null, arms: null, standing: null, pressure: null, scores: [], rechecks: [] };
    const value = { ...none, meanPressureMmHg: null, pulsePressureMmHg: null, actNow: [], earlyWarning };
    return resultLines(value as never, words)[0]?.text;
  };
  expect(text(0, ['temperature', 'consciousness'])).toMatch(/^not scored whole: 2 parts missing \(/);
  expect(text(0, ['temperature'])).toMatch(/^not scored whole: 1 part missing \(/);
  expect(text(3, ['temperature'])).toMatch(/^not scored whole, at least 3: 1 part missing \(/);
});

describe('the order in which the result is read', () => {
  const none = {
    meanPressureMmHg: null,
    pulsePressureMmHg: null,
    pressure: null,
    arms: null,
    standing: null,
  };
  const made = {
    ...{ ...none, scores: [], rechecks: [], actNow: [] },
    category: {
      ...{ category: 'normal', atLeast: 'normal', level: 'normal', guideline: 'acc-aha-2017', highestOf: 1 },
      ...{ shown: { systolic: '118', diastolic: '62' }, flags: [], why: [] },
    },
    earlyWarning: { parts: {}, total: null, atLeast: 0, missing: [], response: null, flags: [] },
  };
  const lines = (more: object, notes = NO_ROUND_NOTES) =>
    resultLines({ ...made, ...more } as never, words, notes);

  // Bedside handbook 3.7: sounds to zero; 3.17: a systolic of 90 or under.
  test('what is doubtful of a category, or speaks against it, comes before “Normal”', () => {
    const isFirst = (more: object, notes?: typeof NO_ROUND_NOTES) =>
      lines(more, notes).find(({ name }) => name === 'Category')?.isFlagFirst;
    expect(isFirst({})).toBe(false);
    expect(isFirst({ actNow: [{ condition: 'very-low-pressure', figures: { systolic: 84 } }] })).toBe(true);
    const category = [{ code: 'diastolic-of-muffling', figures: {} }] as const;
    expect(isFirst({}, { ...NO_ROUND_NOTES, category })).toBe(true);
  });

  // What is worked out of the newest reading stands beside an average of others, and says so.
  test('what goes by the last reading alone says so, each number of it, and nothing does where the average goes before', () => {
    const more = {
      pressure: {
        systolic: 146,
        diastolic: 90,
        used: ['b'],
        rule: 'nice-ng136',
        needs: [],
        flags: [],
        why: [],
      },
      meanPressureMmHg: 72.7,
      pulsePressureMmHg: 38,
      scores: [{ of: 'shock-index', value: 0.9, flags: [] }],
      earlyWarning: { ...made.earlyWarning, total: 2, parts: { systolic: 2 } },
    };
    const ofLast = (text: RegExp, notes?: typeof NO_ROUND_NOTES) =>
      resultLines({ ...made, ...more } as never, text === BY_LAST_ES ? spanish : words, notes)
        .filter((line) => text.test(line.text))
        .map(({ name }) => name);
    const newestFirst = { ...NO_ROUND_NOTES, newestFirst: 'c' };
    expect(ofLast(BY_LAST, newestFirst)).toEqual([
      'Mean pressure',
      'Pulse pressure',
      'Shock index of an adult',
      'Early-warning score',
    ]);
    expect(ofLast(BY_LAST_ES, newestFirst)).toHaveLength(4);
    expect(ofLast(BY_LAST)).toEqual([]);
    // The average is of that reading alone.
    expect(ofLast(BY_LAST, { ...NO_ROUND_NOTES, newestFirst: 'b' })).toEqual([]);
  });

  test('a score that asks for nothing comes after what asks for something', () => {
    const arms = { why: [{ code: 'arms-repeat', figures: { systolicMmHg: 12, limitMmHg: 10 } }] };
    expect(lines({ arms }).map(({ name }) => name)).toEqual([
      'Category',
      'The two arms',
      'Early-warning score',
    ]);
  });

  test('what was repeated already is not said to be repeated when it is', () => {
    const later = { code: 'recheck-abnormal-later', fromSeconds: 600, withinSeconds: 900 };
    const soon = { ...later, code: 'recheck-abnormal-soon' };
    const codes = (rechecks: object[]) =>
      lines({ rechecks })
        .at(1)
        ?.flags.map(({ code }) => code);
    expect(codes([soon, later])).toEqual(['recheck-abnormal-soon', 'recheck-abnormal-later']);
    expect(codes([later])).toEqual(['recheck-abnormal-again']);
  });
});

test('an average says from how many readings and by whose rule, and leaves the wording of the rule to the protocol', () => {
  const pressure = { systolic: 149, diastolic: 91, used: ['a', 'b'], needs: [], flags: [], why: [] };
  const none = { meanPressureMmHg: null, pulsePressureMmHg: null, earlyWarning: null, category: null };
  const textBy = (more: object) =>
    resultLines(
      {
        ...{ ...none, arms: null, standing: null, scores: [], rechecks: [], actNow: [] },
        pressure: { ...pressure, rule: 'acc-aha-2017', ...more },
      } as never,
      words,
    )[0]?.text;
  expect(textBy({ isGeneral: false })).toBe('149/91 from 2 readings, by ACC/AHA 2017');
  expect(textBy({ isGeneral: true })).toBe(
    '149/91 from 2 readings, by the general rule (that of ACC/AHA 2017), as no protocol was chosen here',
  );
});
