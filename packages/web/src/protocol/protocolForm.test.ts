import { categoryRules, listPresets, localFields, overrideFields, readingsRules } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import {
  choiceOf,
  fieldRefused,
  guidelines,
  NOTHING_CHOSEN_YET,
  presetOf,
  protocolOf,
  sectionsOf,
  withGuideline,
  withOwn,
  withPreset,
} from './protocolForm.js';

const made = (...of: Parameters<typeof protocolOf>) => {
  const read = protocolOf(...of);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
};

// Conventions 1: a guideline has one id everywhere.
test('one guideline sets every section that has a preset of it, and leaves the others', () => {
  expect(guidelines()).toContain('esc-2024');
  const chosen = withGuideline({ ...NOTHING_CHOSEN_YET, presets: { count: 'full-minute' } }, 'esc-2024');
  const protocol = made(chosen);
  expect(protocol.presets).toMatchObject({
    count: 'full-minute',
    readings: 'esc-2024',
    category: 'esc-2024',
  });
  expect(categoryRules(protocol).adultScheme).toBe('esc-2024');
  expect(readingsRules(protocol).rule).toBe('esc-2024');
});

test('every guideline that is offered gives a protocol', () => {
  for (const guideline of guidelines()) {
    const { presets } = made(withGuideline(NOTHING_CHOSEN_YET, guideline));
    const sections = listPresets().filter(({ id }) => id === guideline);
    expect(sections.length).toBeGreaterThan(1);
    for (const { section } of sections) expect(presets[section]).toBe(guideline);
  }
});

test('a value of the place wins and the published one stays beside it; a bad one is refused at its field', () => {
  const own = { 'readings/gapSeconds': '90', 'round/palpateFirst': 'false' };
  const protocol = made({ ...NOTHING_CHOSEN_YET, own });
  expect(protocol.sections.readings?.gapSeconds).toMatchObject({
    value: 90,
    source: 'local',
    replaces: { value: 60 },
  });
  expect(choiceOf(protocol).own).toEqual(own);
  expect(made(choiceOf(protocol))).toEqual(protocol);
  expect(protocolOf(withOwn(NOTHING_CHOSEN_YET, 'readings/gapSeconds', 'soon'))).toMatchObject({
    ok: false,
    refusals: [{ field: '/sections/readings/gapSeconds/value', code: 'not-a-number' }],
  });
});

test('a time of day is typed as one, and one that cannot be read is asked for as one', () => {
  const protocol = made(withOwn(NOTHING_CHOSEN_YET, 'home/dayStartsAt', '3:30'));
  expect(protocol.sections.home?.dayStartsAt).toMatchObject({ value: 210, replaces: { value: 240 } });
  expect(choiceOf(protocol).own).toEqual({ 'home/dayStartsAt': '03:30' });
  expect(made(choiceOf(protocol))).toEqual(protocol);
  expect(protocolOf(withOwn(NOTHING_CHOSEN_YET, 'home/dayStartsAt', 'at four'))).toMatchObject({
    refusals: [{ field: '/sections/home/dayStartsAt/value', code: 'not-a-time', expected: 'a-time-of-day' }],
  });
  // Digits alone are a time too, and never so many minutes.
  expect(
    made(withOwn(NOTHING_CHOSEN_YET, 'ambulatory/nightFrom', '0030')).sections.ambulatory?.nightFrom,
  ).toMatchObject({ value: 30 });
  expect(protocolOf(withOwn(NOTHING_CHOSEN_YET, 'home/dayStartsAt', '90'))).toMatchObject({
    refusals: [{ code: 'not-a-time' }],
  });
  expect(protocolOf(withOwn(NOTHING_CHOSEN_YET, 'home/dayStartsAt', '23:00'))).toMatchObject({
    refusals: [{ code: 'out-of-range', expected: 'within-times-of-day', got: '23:00' }],
  });
});

// ESC 2024 says nothing of its own of when to act at once (bedside handbook 4): that section stays what it was.
test('a guideline that was chosen stays chosen, also when it is read back, and says which sections it has', () => {
  const before = withPreset(NOTHING_CHOSEN_YET, 'actNow', 'acc-aha-2017');
  const chosen = withGuideline(before, 'esc-2024');
  expect(chosen.guideline).toBe('esc-2024');
  expect(sectionsOf('esc-2024')).toEqual(['category', 'readings', 'arms', 'home', 'ambulatory']);
  expect(presetOf('actNow', chosen.presets)).toBe('acc-aha-2017');
  expect(choiceOf(made(chosen)).guideline).toBe('esc-2024');
  expect(withGuideline(chosen, '')).toEqual({ ...chosen, guideline: '' });
});

test('it is of no guideline once a section of it says otherwise, and another section changes nothing', () => {
  const chosen = withGuideline(NOTHING_CHOSEN_YET, 'esc-2024');
  expect(withPreset(chosen, 'count', 'full-minute').guideline).toBe('esc-2024');
  expect(withPreset(chosen, 'arms', 'nice-ng136').guideline).toBe('');
  expect(choiceOf(made(withPreset(chosen, 'arms', 'nice-ng136'))).guideline).toBe('');
  expect(choiceOf(made(NOTHING_CHOSEN_YET)).guideline).toBe('');
});

test('a value of the place that cannot be typed here stays when something else is changed', () => {
  const switchedOff = ['very-slow-pulse'];
  const read = overrideFields(made(NOTHING_CHOSEN_YET), [
    { section: 'actNow', key: 'switchedOff', value: switchedOff },
  ]);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const changed = made(withOwn(choiceOf(read.value), 'inflation/marginMmHg', '25'));
  expect(localFields(changed).map(({ key, field }) => [key, field.value])).toEqual([
    ['marginMmHg', 25],
    ['switchedOff', switchedOff],
  ]);
});

test('every refusal of a value leads to the field that it is about', () => {
  const read = protocolOf(withOwn(NOTHING_CHOSEN_YET, 'inflation/marginMmHg', 'abc'));
  if (read.ok) throw new Error('taken');
  expect(read.refusals.map(({ field }) => fieldRefused(field))).toEqual([
    { section: 'inflation', key: 'marginMmHg' },
  ]);
  // The margin is a setting from 10 to 40 mmHg (bedside handbook 3.5).
  for (const [text, isTaken] of [
    ['9.9', false],
    ['10', true],
    ['40', true],
    ['40.1', false],
  ] as const) {
    const own = { 'inflation/marginMmHg': text, 'inflation/smallMarginMmHg': '5' };
    expect(protocolOf({ ...NOTHING_CHOSEN_YET, own }).ok, text).toBe(isTaken);
  }
  expect(fieldRefused('/presets/category')).toBeNull();
  expect(fieldRefused('/sections/inflation/colour')).toBeNull();
});

test('a blank value is the published one and never a zero', () => {
  const blank = made(withOwn(NOTHING_CHOSEN_YET, 'inflation/marginMmHg', ' '));
  expect(blank).toEqual(made(NOTHING_CHOSEN_YET));
});
