import { describe, expect, test } from 'vitest';
import type { GaugeType } from './gaugeLog.js';
import { type GaugeDone, gaugeStanding } from './gaugeStanding.js';
import { DEFAULT_EQUIPMENT_RULES } from './rules.js';

const done = (of: GaugeDone['of'], day: string, verdict: GaugeDone['verdict'] = 'good'): GaugeDone => ({
  of,
  verdict,
  day,
  atMs: Date.parse(`${day}T08:00:00Z`),
});
const WHOLE = [done('zero', '2026-05-25'), done('comparison', '2026-05-25'), done('leak', '2026-05-25')];
const statesOn = (today: string, log: readonly GaugeDone[], type: GaugeType = 'aneroid') =>
  gaugeStanding(type, log, today).checks.map(({ state }) => state);

test('a gauge that nobody checked is due, and none of its checks was ever good', () => {
  expect(gaugeStanding('aneroid', [], '2026-05-25')).toMatchObject({ state: 'due', doubts: [] });
  expect(statesOn('2026-05-25', [])).toEqual(['never', 'never', 'never']);
});

// Arch Intern Med 1991;151:1409: every 6 months. Common practice, no source: 7 days for the zero.
test.each([
  ['2026-05-25', ['good', 'good', 'good']],
  ['2026-06-01', ['good', 'good', 'good']],
  ['2026-06-02', ['overdue', 'good', 'good']],
  ['2026-11-25', ['overdue', 'good', 'good']],
  ['2026-11-26', ['overdue', 'overdue', 'overdue']],
])('on %s the checks of 25 May are %j', (today, states) => {
  expect(statesOn(today, WHOLE)).toEqual(states);
});

// Turner, Speechly and Bignell 2007: at least once a year, aneroid gauges every 6 months.
test('a comparison of a mercury gauge holds a year', () => {
  expect(statesOn('2027-05-25', WHOLE, 'mercury')[1]).toBe('good');
  expect(statesOn('2027-05-26', WHOLE, 'mercury')[1]).toBe('overdue');
  expect(statesOn('2027-05-25', WHOLE, 'electronic')[1]).toBe('overdue');
});

test('a check holds as long as the place says, whenever it was made', () => {
  const rules = { ...DEFAULT_EQUIPMENT_RULES, zeroDays: 1, comparisonMonths: 3, leakMonths: 12 };
  const on = (today: string) =>
    gaugeStanding('aneroid', WHOLE, today, rules).checks.map(({ state }) => state);
  expect(on('2026-05-26')).toEqual(['good', 'good', 'good']);
  expect(on('2026-05-27')).toEqual(['overdue', 'good', 'good']);
  expect(on('2026-08-25')).toEqual(['overdue', 'good', 'good']);
  expect(on('2026-08-26')).toEqual(['overdue', 'overdue', 'good']);
  expect(on('2027-05-25')).toEqual(['overdue', 'overdue', 'good']);
  expect(on('2027-05-26')).toEqual(['overdue', 'overdue', 'overdue']);
});

describe('a failed gauge', () => {
  test('is failed until the same check is good: another check does not make it good', () => {
    const out = [...WHOLE, done('comparison', '2026-05-28', 'failed')];
    expect(gaugeStanding('aneroid', out, '2026-05-28').state).toBe('failed');
    expect(gaugeStanding('aneroid', [...out, done('zero', '2026-05-29')], '2026-05-29').state).toBe('failed');
    expect(gaugeStanding('aneroid', [...out, done('comparison', '2026-05-29')], '2026-05-29').state).toBe(
      'good',
    );
  });

  const ms = (day: string) => Date.parse(`${day}T08:00:00Z`);
  const doubtsOn = (today: string, log: readonly GaugeDone[]) => gaugeStanding('aneroid', log, today).doubts;

  test('puts in doubt what was read since that check was last good', () => {
    const log = [...WHOLE, done('zero', '2026-05-27'), done('zero', '2026-05-28', 'failed')];
    const zero = { of: 'zero', afterMs: ms('2026-05-27'), failedMs: ms('2026-05-28'), untilMs: null };
    expect(doubtsOn('2026-05-28', log)).toEqual([zero]);
    const leak = { of: 'leak', afterMs: ms('2026-05-25'), failedMs: ms('2026-05-29'), untilMs: null };
    expect(doubtsOn('2026-05-29', [...log, done('leak', '2026-05-29', 'failed')])).toEqual([zero, leak]);
  });

  test('of which that check was never good puts everything in doubt', () => {
    const log = [done('zero', '2026-05-25'), done('comparison', '2026-05-26', 'failed')];
    expect(doubtsOn('2026-05-26', log)).toMatchObject([{ of: 'comparison', afterMs: null }]);
  });

  test('that fails twice is one doubt, from the first time; a repair or a good check ends it and undoes nothing', () => {
    const twice = [
      ...WHOLE,
      done('comparison', '2026-05-28', 'failed'),
      done('comparison', '2026-05-29', 'failed'),
    ];
    const doubt = { of: 'comparison', afterMs: ms('2026-05-25'), failedMs: ms('2026-05-28') };
    expect(doubtsOn('2026-05-30', twice)).toEqual([{ ...doubt, untilMs: null }]);
    for (const end of [done('repaired', '2026-05-30', 'none'), done('comparison', '2026-05-30')])
      expect(doubtsOn('2026-05-30', [...twice, end])).toEqual([{ ...doubt, untilMs: ms('2026-05-30') }]);
  });

  test('that was repaired is due, until it is compared', () => {
    const log = [
      ...WHOLE,
      done('comparison', '2026-05-28', 'failed'),
      done('repaired', '2026-05-29', 'none'),
    ];
    expect(gaugeStanding('aneroid', log, '2026-05-29').state).toBe('due');
    expect(statesOn('2026-05-29', log)).toEqual(['never', 'never', 'never']);
  });
});

// Bedside handbook 3.9: "or after a knock".
test('a fall undoes what was good, and hides no failure', () => {
  const dropped = [...WHOLE, done('dropped', '2026-05-26', 'none')];
  expect(statesOn('2026-05-26', dropped)).toEqual(['disturbed', 'disturbed', 'disturbed']);
  const failed = [
    ...WHOLE,
    done('zero', '2026-05-26', 'failed'),
    { ...done('dropped', '2026-05-27', 'none') },
  ];
  expect(statesOn('2026-05-27', failed)[0]).toBe('failed');
});

test('an incomplete check changes nothing', () => {
  expect(statesOn('2026-05-26', [...WHOLE, done('comparison', '2026-05-26', 'incomplete')])).toEqual([
    'good',
    'good',
    'good',
  ]);
});

test('the order in which the log is given does not matter', () => {
  const log = [...WHOLE, done('comparison', '2026-05-28', 'failed'), done('comparison', '2026-05-29')];
  expect(gaugeStanding('aneroid', log.toReversed(), '2026-05-30')).toEqual(
    gaugeStanding('aneroid', log, '2026-05-30'),
  );
});
