import {
  type AmbulatoryCircumstances,
  ambulatoryResult,
  ambulatoryRules,
  type DayNight,
  presetProtocol,
  type SeriesReading,
} from '@evenfall/clinical';
import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { A1, readingAt } from '../../../clinical/src/outOfOffice/testing.js';
import { axisOf, elementsOf, stretchesOf, tipOf, withClass } from '../../testing/svgParts.js';
import { recordingFigure } from './recordingFigure.js';

const words = wordsFor('en-GB');
const DIARY: DayNight = { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } };

function drawnBy(
  readings: readonly SeriesReading[],
  more: { dayNight?: DayNight; id?: string; isAllUsed?: boolean; said?: typeof words; width?: number } = {},
) {
  const { dayNight = DIARY, id = 'esc-2024', isAllUsed = false, said = words, width } = more;
  const protocol = presetProtocol({ ambulatory: id });
  if (!protocol.ok) throw new Error(id);
  const rules = ambulatoryRules(protocol.value);
  const known: AmbulatoryCircumstances = {
    ageYears: null,
    isPregnant: false,
    scheduled: null,
    dayNight,
    isAllUsed,
    rejected: new Set(),
    restored: new Set(),
  };
  const result = ambulatoryResult(readings, known, rules);
  return recordingFigure({ readings, result, rules, dayNight }, said, width === undefined ? {} : { width });
}

const one = (index: number, day: number, clock: string, typed: string) => readingAt(index, day, clock, typed);

test('the crosses are in the key where a measurement failed, and nowhere else', () => {
  const failed = A1.map((reading, k) =>
    k === 3 ? { ...reading, systolic: null, diastolic: null } : reading,
  );
  const keyOf = (readings: readonly SeriesReading[]) =>
    elementsOf(drawnBy(readings).svg)
      .map(({ text }) => text)
      .join(' ');
  expect(keyOf(failed)).toContain('Crosses: measurements that failed.');
  expect(keyOf(A1)).not.toContain('Crosses');
});

test('as narrow as on a phone of 390 px it has the whole day with its night, and no number of readings on another', () => {
  const figure = drawnBy(A1, { width: 264 });
  const night = withClass(figure.svg, 'figure-night')[0]!.at;
  expect(Number(night.x) + Number(night.width)).toBeLessThan(264);
  const clocks = elementsOf(figure.svg).filter(({ text }) => /^\d\d:00$/.test(text));
  expect(clocks.map(({ text }) => text)).toEqual(['12:00', '18:00', '00:00', '06:00']);
  const least = Math.min(...clocks.slice(1).map(({ at }, k) => Number(at.x) - Number(clocks[k]!.at.x)));
  expect(least).toBeGreaterThan(35);
  expect(elementsOf(figure.svg).filter(({ text }) => /^[12]$/.test(text))).toEqual([]);
});

// Source of A1: out-of-office handbook 19 (an invented recording). What the plot is: handbook 18, point 3.
describe('the invented recording A1 in its figure', () => {
  const figure = drawnBy(A1);
  const { svg } = figure;
  const nights = withClass(svg, 'figure-night').map(({ at }) => at);
  const panel = { top: Number(nights[0]!.y), bottom: Number(nights[0]!.y) + Number(nights[0]!.height) };
  const strip = { top: Number(nights[1]!.y), bottom: Number(nights[1]!.y) + Number(nights[1]!.height) };
  const y = axisOf(svg, 40, 220, { top: panel.top, bottom: panel.bottom + 5 });
  const labels = elementsOf(svg).filter(({ name, at }) => name === 'text' && at['text-anchor'] === 'end');
  const hourX = (text: string) => Number(elementsOf(svg).find((found) => found.text === text)!.at.x);
  // The axis read from its own labels: 12:00 and 21:00 are nine hours apart, and the start is three hours before noon.
  const perHour = (hourX('21:00') - hourX('12:00')) / 9;
  const x = (hours: number) => hourX('12:00') + (hours - 3) * perHour;

  test('a nap by the diary is shaded from its start to its end and named, its readings belong to neither period', () => {
    // Source: out-of-office handbook 7 (a siesta is a third state).
    const nap = { from: 13 * 60, to: 15 * 60 };
    const napped = drawnBy(A1, { dayNight: { ...DIARY, nap } as DayNight });
    const shaded = withClass(napped.svg, 'figure-nap');
    expect(shaded).toHaveLength(2);
    for (const { at } of shaded) {
      expect(Math.abs(Number(at.x) - x(4))).toBeLessThan(0.05);
      expect(Math.abs(Number(at.width) - 2 * perHour)).toBeLessThan(0.05);
    }
    expect(elementsOf(napped.svg).map(({ text }) => text)).toContain('nap');
    const said = (clock: string) => napped.marks.find(({ text }) => text.startsWith(clock))?.text;
    expect(said('13:00')).not.toContain('Counted to');
    expect(said('15:00')).toContain('Counted to the day');
    expect(withClass(svg, 'figure-nap')).toEqual([]);
  });

  test('the scale goes from 40 to 220 with a gridline each 20, from the start hour for 24 hours, with midnight marked', () => {
    const inPanel = labels
      .filter(({ at }) => Number(at.y) <= panel.bottom + 5)
      .map(({ text }) => Number(text));
    expect(inPanel).toEqual([40, 60, 80, 100, 120, 140, 160, 180, 200, 220]);
    const clocks = elementsOf(svg)
      .map(({ text }) => text)
      .filter((text) => /^\d\d:00$/.test(text));
    expect(clocks).toEqual(['09:00', '12:00', '15:00', '18:00', '21:00', '00:00', '03:00', '06:00', '09:00']);
    const [midnight] = withClass(svg, 'figure-midnight');
    expect(Math.abs(Number(midnight!.at.x1) - x(15))).toBeLessThan(0.02);
    expect(
      elementsOf(svg)
        .filter(({ text }) => /mmHg|\/min/.test(text))
        .map(({ text }) => text),
    ).toEqual(expect.arrayContaining(['Pressure, mmHg', 'Pulse, /min']));
  });

  test('each reading is a bar from diastolic to systolic at its time', () => {
    const bars = withClass(svg, 'figure-bar');
    expect(bars.length).toBe(40);
    A1.forEach((reading, k) => {
      const { at } = bars[k]!;
      const hours = (reading.localDay * 1440 + reading.minuteOfDay - 9 * 60) / 60;
      for (const [found, wanted] of [
        [at.x1, x(hours)],
        [at.y1, y(reading.systolic!)],
        [at.y2, y(reading.diastolic!)],
      ] as const)
        expect(Math.abs(Number(found) - wanted)).toBeLessThan(0.03);
      const [tip] = withClass(svg, `key-reading-${reading.index}`, 'is-systolic');
      expect(Math.abs(tipOf(tip!)[1] - y(reading.systolic!))).toBeLessThan(0.03);
    });
  });

  test('the sleep is shaded from 23:00 to 07:00', () => {
    expect(Math.abs(Number(nights[0]!.x) - x(14))).toBeLessThan(0.03);
    expect(Math.abs(Number(nights[0]!.width) - 8 * perHour)).toBeLessThan(0.05);
  });

  test('limits are steps that change at sleep and waking: 135/85 to 120/70 and back', () => {
    const paths = withClass(svg, 'figure-limit').map(({ at }) => stretchesOf(at.d!));
    expect(paths.length).toBe(2);
    paths.forEach((stretches, k) => {
      const [day, night] = k === 0 ? [135, 120] : [85, 70];
      const wanted = [
        [0, day],
        [14, day],
        [14, night],
        [22, night],
        [22, day],
        [24, day],
      ];
      expect(stretches.length).toBe(1);
      expect(stretches[0]!.length).toBe(6);
      wanted.forEach(([hours, mmHg], at) => {
        const [foundX, foundY] = stretches[0]![at]!;
        expect(Math.abs(foundX - x(hours!))).toBeLessThan(0.03);
        expect(Math.abs(foundY - y(mmHg!))).toBeLessThan(0.03);
      });
    });
  });

  test('pulse stands in a strip of its own, on its own scale', () => {
    const pulse = axisOf(svg, 40, 120, { top: strip.top, bottom: strip.bottom + 5 });
    const dots = withClass(svg, 'is-pulse', 'figure-mark');
    expect(dots.length).toBe(40);
    dots.forEach(({ at }, k) => {
      expect(Number(at.cy)).toBeGreaterThan(panel.bottom);
      expect(Math.abs(Number(at.cy) - pulse(A1[k]!.pulse!))).toBeLessThan(0.03);
    });
  });

  test('means of each hour stand with their n, and in the table', () => {
    expect(withClass(svg, 'figure-hour', 'is-systolic').length).toBe(24);
    expect(figure.table.rows.length).toBe(24);
    expect(figure.table.rows[0]).toEqual(['09:00', '2', '140.0', '89.0', '77.0']);
    const ns = figure.table.rows.map(([, n]) => Number(n));
    expect(ns.reduce((sum, n) => sum + n, 0)).toBe(40);
    // The mean of the hourly means: handbook 19, 129.9167.
    const means = figure.table.rows.map(([, , systolic]) => Number(systolic));
    expect(means.reduce((sum, mean) => sum + mean, 0) / 24).toBeCloseTo(129.9167, 4);
  });

  test('the text alternative says n, the means and the limits', () => {
    expect(figure.description).toBe(
      '40 of 40 readings kept: 32 by day, 8 by night; 0 edited. Means in mmHg: 24 hours 129.8/80, day 137/86, night 115/69. Limits in mmHg: day 135/85, night 120/70.',
    );
  });

  test('a mark says when, what and to which period it is counted', () => {
    expect(figure.marks.length).toBe(40);
    expect(figure.marks[28]!.text).toBe('23:30: 121/73 mmHg, pulse 64. Counted to the night.');
  });
});

// Source: out-of-office handbook 18, point 3: lines are broken over gaps of more than two hours.
test('a line goes across two hours and is broken over a minute more', () => {
  const across = (clock: string) => {
    const { svg } = drawnBy([one(1, 0, '09:00', '140/90 70'), one(2, 0, clock, '130/80 66')]);
    const [trace] = withClass(svg, 'figure-trace', 'is-systolic');
    return stretchesOf(trace!.at.d!).length;
  };
  expect([across('10:59'), across('11:00'), across('11:01')]).toEqual([1, 1, 2]);
});

test('an edited reading is open and not joined; a measurement that failed is a cross', () => {
  const { svg, marks } = drawnBy([
    one(1, 0, '09:00', '140/90 70'),
    one(2, 0, '09:30', '264/92 80'), // systolic over 260: handbook 6 and A3
    { ...one(3, 0, '10:00', '1/1 1'), systolic: null, diastolic: null, pulse: null },
    one(4, 0, '10:30', '138/88 72'),
  ]);
  expect(withClass(svg, 'key-reading-2', 'is-left-out', 'is-systolic')[0]!.at.fill).toBe('#ffffff');
  expect(withClass(svg, 'key-reading-3', 'is-cross').length).toBe(1);
  const [trace] = withClass(svg, 'figure-trace', 'is-systolic');
  expect(stretchesOf(trace!.at.d!)[0]!.length).toBe(2);
  expect(marks.map(({ isUsed }) => isUsed)).toEqual([true, false, false, true]);
  expect(marks[1]!.text).toContain('Left out. Systolic is outside the range of the editing rule');
  expect(svg).toContain('The scale is extended to 40-280');
});

test('without a reading, or with one, there is a frame and no number that is none', () => {
  const none = drawnBy([]);
  expect(none.svg).toContain('No reading to draw');
  for (const { svg } of [none, drawnBy([A1[0]!]), drawnBy([A1[0]!], { dayNight: { by: 'asleep-marks' } })])
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});

test('by marks of sleep the shade begins and ends half way between the readings on both sides', () => {
  const asleep = (reading: SeriesReading, isAsleep: boolean) => ({ ...reading, asleep: isAsleep });
  const { svg } = drawnBy(
    [
      asleep(one(1, 0, '21:00', '140/90 70'), false),
      asleep(one(2, 0, '23:00', '120/70 60'), true),
      asleep(one(3, 1, '06:00', '118/70 60'), true),
      asleep(one(4, 1, '07:00', '138/88 70'), false),
    ],
    { dayNight: { by: 'asleep-marks' } },
  );
  const [shade] = withClass(svg, 'figure-night');
  const hour = (text: string) => Number(elementsOf(svg).find((found) => found.text === text)!.at.x);
  const perHour = (hour('03:00') - hour('00:00')) / 3;
  expect(Math.abs(Number(shade!.at.x) - (hour('00:00') - 2 * perHour))).toBeLessThan(0.03); // 22:00
  expect(Math.abs(Number(shade!.at.width) - 8.5 * perHour)).toBeLessThan(0.03); // to 06:30
});

// Source: T1 of the out-of-office handbook 19: 2025-03-09T01:30-05:00 and 03:30-04:00 are one hour apart.
test('on the night on which the clock is set forward, distance is time that passed and the change is marked', () => {
  const { svg, marks } = drawnBy([
    { ...one(1, 0, '00:00', '120/70 60'), atMs: 0 },
    { ...one(2, 0, '01:30', '118/70 60'), atMs: 1.5 * 3_600_000 },
    { ...one(3, 0, '03:30', '118/70 60'), atMs: 2.5 * 3_600_000 },
  ]);
  const [a, b, c] = marks.map((mark) => mark.x);
  expect((b! - a!) / (c! - b!)).toBeCloseTo(1.5, 6);
  expect(withClass(svg, 'figure-clock-change').length).toBe(1);
  // 06:00 by the wall clock comes five hours after midnight.
  const hour = (text: string) => Number(elementsOf(svg).find((found) => found.text === text)!.at.x);
  expect((hour('06:00') - a!) / (c! - b!)).toBeCloseTo(5, 1);
});

test('in Spanish, by the clock alone', async () => {
  const figure = drawnBy(A1, {
    said: await loadWords('es'),
    dayNight: { by: 'clock', day: { from: 540, to: 1260 }, night: { from: 60, to: 360 } },
  });
  expect(figure.svg).toContain('noche por el reloj');
  expect(figure.description).toContain('24 de día, 5 de noche');
  // Between the windows no limit holds: the steps have a stretch for each window.
  const [limit] = withClass(figure.svg, 'figure-limit', 'is-systolic');
  expect(stretchesOf(limit!.at.d!).length).toBe(2);
});

// The readings do not say when the clock was changed; a night without a reading before it still has its midnight.
test('with no reading from evening to morning, midnight is marked all the same on the night of a change', () => {
  const HOUR = 3_600_000;
  const { svg, marks } = drawnBy([
    { ...one(1, 0, '08:00', '140/90 70'), atMs: 8 * HOUR },
    { ...one(2, 0, '21:00', '130/80 66'), atMs: 21 * HOUR },
    { ...one(3, 1, '06:00', '120/70 60'), atMs: 29 * HOUR }, // nine hours by the wall clock, eight that passed
  ]);
  const [midnight] = withClass(svg, 'figure-midnight');
  const perHour = (marks[1]!.x - marks[0]!.x) / 13;
  expect(Math.abs(Number(midnight!.at.x1) - (marks[0]!.x + 16 * perHour))).toBeLessThan(0.03);
  const [change] = withClass(svg, 'figure-clock-change');
  expect(Math.abs(Number(change!.at.x1) - (marks[0]!.x + 18 * perHour))).toBeLessThan(0.03); // two at night
});

test('on a phone labels of the clock stand further apart and the key takes more lines', () => {
  const protocol = presetProtocol({ ambulatory: 'esc-2024' });
  if (!protocol.ok) throw new Error('esc-2024');
  const rules = ambulatoryRules(protocol.value);
  const known = { ageYears: null, isPregnant: false, scheduled: null, isAllUsed: false, rejected: new Set<number>(), restored: new Set<number>() }; // biome-ignore format: one thought
  const result = ambulatoryResult(A1, { ...known, dayNight: DIARY }, rules);
  const { svg, width } = recordingFigure({ readings: A1, result, rules, dayNight: DIARY }, words, {
    width: 320,
  });
  const clocks = elementsOf(svg).filter(({ text }) => /^\d\d:00$/.test(text));
  expect(clocks.map(({ text }) => text)).toEqual(['12:00', '18:00', '00:00', '06:00']);
  // A letter of this font is at most 0.7 of its size wide on the average of a line (DejaVu Sans: 0.55 to 0.6).
  for (const { text, at } of elementsOf(svg).filter(
    ({ text }) => text.includes('Point') || text.includes('edited'),
  ))
    if (at['font-size'] === '8.5') expect(Number(at.x) + text.length * 8.5 * 0.6).toBeLessThan(width + 8.5);
});
