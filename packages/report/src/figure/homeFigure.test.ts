import {
  homeResult,
  homeRules,
  NOTHING_BY_HAND,
  presetProtocol,
  type SeriesReading,
} from '@evenfall/clinical';
import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { H1, readingAt } from '../../../clinical/src/outOfOffice/testing.js';
import { axisOf, elementsOf, tipOf, withClass } from '../../testing/svgParts.js';
import { homeFigure } from './homeFigure.js';

const words = wordsFor('en-GB');
const ALL = { top: 0, bottom: 1000 };

function drawnBy(readings: readonly SeriesReading[], id = 'ish-2020', said = words) {
  const protocol = presetProtocol({ home: id });
  if (!protocol.ok) throw new Error(id);
  const rules = homeRules(protocol.value);
  const result = homeResult(readings, NOTHING_BY_HAND, rules);
  return { ...homeFigure({ readings, result, rules }, said), result };
}

// Source of H1: out-of-office handbook 19 (an invented series). What a home page shows: handbook 18.
describe('the invented week H1 in its figure', () => {
  const figure = drawnBy(H1);
  const y = axisOf(figure.svg, 60, 180, ALL);

  test('every reading stands where the gridlines say, systolic by its point down and diastolic by its point up', () => {
    for (const { index, systolic, diastolic } of H1) {
      const [over] = withClass(figure.svg, `key-reading-${index}`, 'is-systolic');
      const [under] = withClass(figure.svg, `key-reading-${index}`, 'is-diastolic');
      expect(Math.abs(tipOf(over!)[1] - y(systolic!))).toBeLessThan(0.02);
      expect(Math.abs(tipOf(under!)[1] - y(diastolic!))).toBeLessThan(0.02);
    }
    expect(figure.marks.map(({ index }) => index)).toEqual(H1.map(({ index }) => index));
  });

  test('limit and mean are lines at 135, 85 and at the means that are not rounded', () => {
    const places = (name: string) => withClass(figure.svg, name).map(({ at }) => Number(at.y1));
    const near = (found: number[], wanted: number[]) => {
      for (const [k, one] of found.entries()) expect(Math.abs(one - y(wanted[k]!))).toBeLessThan(0.02);
    };
    near(places('figure-limit'), [135, 85]);
    near(places('figure-mean'), [136.5833, 84.9583]);
    expect(places('figure-limit').length + places('figure-mean').length).toBe(4);
    const dashes = withClass(figure.svg, 'figure-limit').map(({ at }) => at['stroke-dasharray']);
    expect(new Set(dashes).size).toBe(2); // told apart without colour
  });

  test('a time that nobody said is read out as about then, every other one as it was said', () => {
    const protocol = presetProtocol({ home: 'ish-2020' });
    if (!protocol.ok) throw new Error('ish-2020');
    const rules = homeRules(protocol.value);
    const result = homeResult(H1, NOTHING_BY_HAND, rules);
    const { marks } = homeFigure(
      {
        readings: H1,
        result,
        rules,
        about: new Map([2, 28].map((index) => [index, { isAbout: true, place: 1 }])),
      },
      words,
    );
    const plain = figure.marks.map(({ text }) => text);
    expect(
      marks.map(({ text }, at) => text === plain[at]).flatMap((same, at) => (same ? [] : [at + 1])),
    ).toEqual([2, 28]);
    expect(marks[1]?.text).toBe(`about ${plain[1]}`);
  });

  // T1 of the out-of-office handbook 19: on 30 March 2025 the clock of Lisbon went from 00:30+00:00 to 02:30+01:00 within an hour.
  test('a week in which the clock was changed has a mark before that day, and words; another has none', () => {
    const protocol = presetProtocol({ home: 'ish-2020' });
    if (!protocol.ok) throw new Error('ish-2020');
    const rules = homeRules(protocol.value);
    // From the third day on the wall clock stands an hour further on.
    const moved = H1.map((one) => (one.localDay < (H1[8] as (typeof H1)[0]).localDay ? one : { ...one, atMs: one.atMs - 3_600_000 })); // biome-ignore format: one thought
    const drawn = homeFigure(
      { readings: moved, result: homeResult(moved, NOTHING_BY_HAND, rules), rules },
      words,
    );
    const [mark, ...others] = withClass(drawn.svg, 'figure-clock-change');
    expect(others).toEqual([]);
    const xs = drawn.marks.filter(({ index }) => index === 8 || index === 9).map(({ x }) => x);
    expect(Number(mark?.at.x1)).toBeGreaterThan(xs[0] as number);
    expect(Number(mark?.at.x1)).toBeLessThan(xs[1] as number);
    expect(drawn.svg).toContain('clock changed');
    expect(drawn.description).toMatch(/The clock was changed before the readings of \S+/);
    expect(withClass(figure.svg, 'figure-clock-change')).toEqual([]);
    expect(figure.description).not.toContain('clock');
  });

  test('what is left out is open, what is used is filled, and each sitting is joined as a pair', () => {
    expect(withClass(figure.svg, 'is-left-out').length).toBe(8); // two marks of each of the four of day 1
    expect(withClass(figure.svg, 'is-used').length).toBe(48);
    expect(new Set(withClass(figure.svg, 'is-left-out').map(({ at }) => at.fill))).toEqual(
      new Set(['#ffffff']),
    );
    expect(withClass(figure.svg, 'figure-pair').length).toBe(28); // 14 sittings, both numbers
    expect(figure.marks.filter(({ isUsed }) => !isUsed).map(({ index }) => index)).toEqual([1, 2, 3, 4]);
  });

  test('readings stand from left to right as they were taken, each within its own day', () => {
    const xs = figure.marks.map((one) => one.x);
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    const days = elementsOf(figure.svg)
      .filter(({ text }) => /^Day \d$/.test(text))
      .map(({ at }) => Number(at.x));
    expect(days.length).toBe(7);
    const half = (days[1]! - days[0]!) / 2;
    for (const [k, one] of figure.marks.entries())
      expect(Math.abs(one.x - days[Math.floor(k / 4)]!)).toBeLessThan(half);
  });

  test('the text alternative says n, the mean and the limit, on its own side of the limit', () => {
    expect(figure.description).toBe(
      '24 of 28 readings used, on 6 days; 4 left out. The mean is 137/84.96 mmHg. The limit of the rule set is 135/85 mmHg.',
    );
    expect(figure.svg).toContain(`<desc id="home-description">${figure.description}</desc>`);
    expect(figure.svg).toContain('role="img" lang="en-GB" aria-labelledby="home-title home-description"');
  });

  test('a mark says what it is, when, and why it is left out', () => {
    expect(figure.marks[4]!.text).toBe('2 Jan 07:30: 141/88 mmHg, pulse 74.');
    expect(figure.marks[0]!.text).toBe(
      '1 Jan 07:30: 152/94 mmHg, pulse 78. Left out. A reading of day 1 of measuring, which this rule set leaves out.',
    );
  });

  test('the table has each day with its readings; in brackets what is left out', () => {
    expect(figure.table.columns).toEqual(['Day', 'Morning', 'Evening', 'Day mean']);
    expect(figure.table.rows[0]).toEqual(['1. 1 Jan', '(152/94), (148/92)', '(146/90), (143/88)', '-']);
    // Means of the days 137.0, 135.5, ...: handbook 19.
    expect(figure.table.rows[1]).toEqual(['2. 2 Jan', '141/88, 138/86', '136/84, 133/83', '137.0/85.3']);
    expect(figure.table.rows.length).toBe(7);
  });
});

test('a rule set without a limit draws none and says so', () => {
  const figure = drawnBy(H1, 'means-alone-at-home');
  expect(withClass(figure.svg, 'figure-limit')).toEqual([]);
  expect(figure.description).toContain('gives no limit');
});

test('nothing to draw, one reading, or half of one: a frame and no number that is none', () => {
  const none = drawnBy([]);
  expect(none.svg).toContain('No reading to draw');
  expect(none.marks).toEqual([]);
  const one = drawnBy([H1[0]!]);
  const half = drawnBy([{ ...H1[0]!, systolic: null }]);
  expect(one.marks.length).toBe(1);
  expect(half.marks.length).toBe(1);
  for (const { svg } of [none, one, half]) expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});

test('the scale is fixed from 60 to 180 and extended in steps of 20 only where data lie outside, which is said', () => {
  const at = (typed: string) => drawnBy([...H1, readingAt(29, 3, '12:00', typed)]);
  expect(at('180/60 70').svg).not.toContain('extended');
  expect(at('181/60 70').svg).toContain('The scale is extended to 60-200');
  expect(at('180/59 70').svg).toContain('The scale is extended to 40-180');
});

test('in Spanish, with the decimal comma', async () => {
  const figure = drawnBy(H1, 'ish-2020', await loadWords('es'));
  expect(figure.description).toBe(
    '24 de 28 lecturas usadas, en 6 días; 4 excluidas. La media es 137/84,96 mmHg. El límite del conjunto de reglas es 135/85 mmHg.',
  );
});
