import { expect, test } from 'vitest';
import { NO_ROUND_FACTS } from '../round/roundFacts.js';
import { DEFAULT_ROUND_RULES } from '../round/roundRules.js';
import { seriesAlerts } from './seriesAlerts.js';

const reading = (systolic: number | null, diastolic: number | null, pulse: number | null = null) => ({
  systolic,
  diastolic,
  pulse,
});
const rules = DEFAULT_ROUND_RULES;

// Bedside handbook 3.16: severe from 180 or 120 on; a place may have another limit.
test('each condition is told once, with the figures of the first reading that meets it', () => {
  const alerts = seriesAlerts(
    [reading(142, 90), reading(188, 104), reading(196, 122), reading(88, 50), reading(84, 50)],
    null,
    NO_ROUND_FACTS,
    rules,
  );
  expect(alerts.map(({ condition, figures }) => [condition, figures.systolic])).toEqual([
    ['severe-away', 188],
    ['very-low-pressure', 88],
  ]);
  expect(alerts[0]).toMatchObject({ figures: { systolic: 188, diastolic: 104 }, confirmLocally: true });
});

test('a severe one by either number alone, on both sides of its limit and by the limit of the place', () => {
  const conditions = (systolic: number | null, diastolic: number | null, given = rules) =>
    seriesAlerts([reading(systolic, diastolic)], null, NO_ROUND_FACTS, given).map(
      ({ condition }) => condition,
    );
  expect(conditions(179, null)).toEqual([]);
  expect(conditions(180, null)).toEqual(['severe-away']);
  expect(conditions(null, 119)).toEqual([]);
  expect(conditions(null, 120)).toEqual(['severe-away']);
  expect(conditions(null, null)).toEqual([]);
  const place = {
    ...rules,
    actNow: { ...rules.actNow, severeSystolic: { comparison: '>' as const, limit: 180 } },
  };
  expect(conditions(180, 100, place)).toEqual([]);
  expect(conditions(181, 100, place)).toEqual(['severe-away']);
});

test('a place that switched it off by name is not alerted by it, and by everything else it is', () => {
  const off = { ...rules, actNow: { ...rules.actNow, switchedOff: ['severe-away' as const] } };
  const conditions = (given: typeof off) =>
    seriesAlerts([reading(196, 122), reading(84, 50)], null, NO_ROUND_FACTS, given).map(
      ({ condition }) => condition,
    );
  expect(conditions(off)).toEqual(['very-low-pressure']);
  expect(conditions({ ...off, actNow: { ...rules.actNow, switchedOff: [] } })).toEqual([
    'severe-away',
    'very-low-pressure',
  ]);
});

// 88/142 was typed into the wrong columns: 142/88 is no low pressure, and 121/182 is a severe one.
test('two numbers the wrong way round are looked at the right way round', () => {
  const alerts = seriesAlerts([reading(88, 142), reading(121, 182)], null, NO_ROUND_FACTS, rules);
  expect(alerts.map(({ condition, figures }) => [condition, figures])).toEqual([
    ['severe-away', { systolic: 182, diastolic: 121 }],
  ]);
});

test('what already says that it is severe is told in its place', () => {
  const conditions = (facts: Partial<typeof NO_ROUND_FACTS>, features: ['fit'] | null = null) =>
    seriesAlerts([reading(186, 112)], features, { ...NO_ROUND_FACTS, ...facts }, rules).map(
      ({ condition }) => condition,
    );
  expect(conditions({})).toEqual(['severe-away']);
  expect(conditions({ isPregnant: true })).toEqual(['severe-in-pregnancy']);
  expect(conditions({ weeksAfterBirth: 3 })).toEqual(['severe-after-birth']);
  expect(conditions({ ageMonths: 100 })).toEqual(['child-crisis']);
  expect(conditions({}, ['fit'])).toEqual(['severe-with-fit']);
});
