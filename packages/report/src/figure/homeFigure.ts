import {
  dayPartOf,
  type HomeResult,
  type HomeRules,
  homeDayOf,
  inTimeOrder,
  type SeriesReading,
  type SidedLimit,
  sittingsOf,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, pathThrough, type Svg } from '../svg/svg.js';
import { type DataTable, type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import {
  DASH,
  HALF,
  keyLines,
  label,
  line,
  markShape,
  movedApart,
  SMALL_LINE,
  TEXT,
  wrapped,
} from './parts.js';
import { extendedNote, extentOf, gridLabelsEvery, gridOf, upScale } from './pressureAxis.js';
import {
  DAY_MINUTES,
  dayMeanText,
  dayText,
  meansText,
  meanText,
  offsetOf,
  pressureText,
  type TimesSaid,
  timeOfReading,
} from './times.js';

/** A series at home, as it was answered. `readings` are all that were read, used or not. */
export type HomeDrawn = {
  readonly readings: readonly SeriesReading[];
  readonly result: HomeResult;
  readonly rules: HomeRules;
  /** What was said of times, by the `index` of a reading; absent where every time was read. */
  readonly about?: TimesSaid;
};

/** The scale of a week at home, in mmHg, extended where data lie outside. Source: decision. */
const SCALE = { low: 60, high: 180 } as const;

const USUAL: Drawing = { id: 'home', width: 680, height: 300, paint: PAPER };
const MARGIN = { left: 46, right: 74, top: 14, bottom: 46 } as const;

/** Readings of one sitting stand this far apart, so that a pair is seen as two. */
const BESIDE = 9;

/** A day narrower than this has no line of its own before it. */
const LEAST_DAY = 8;

/** Half the width of the smallest mark. */
const LEAST_HALF = 1.2;

/** Room for the words beside a change of the clock. */
const CHANGE_WIDTH = 70;

/** Room for the label of a day under the plot. */
const LABEL_WIDTH = 52;

/**
 * The week at home: each reading on its day, the readings of one sitting joined, limits and mean as lines, what is left out open and
 * grey. Never NaN: with no reading the frame stands alone and says so.
 *
 * Source: out-of-office handbook 18 (the home page).
 */
export function homeFigure(
  { readings, result, rules, about }: HomeDrawn,
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const key = wrapped(words.sentence('report.homeKey'), width - MARGIN.left, TEXT.small);
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom - (key.length - 1) * SMALL_LINE;
  const limits = [rules.highSystolic, rules.highDiastolic].flatMap((one) =>
    one === null ? [] : [one.limit],
  );
  const values = readings
    .flatMap(({ systolic, diastolic }) => [systolic, diastolic])
    .filter((one) => one !== null);
  const extent = extentOf([...values, ...limits], SCALE.low, SCALE.high);
  const y = upScale(extent, top, bottom);
  const days = readings.map((one) => homeDayOf(one, rules));
  const [firstDay, lastDay] = days.length === 0 ? [0, 0] : [Math.min(...days), Math.max(...days)];
  const x = scaleLinear([firstDay, lastDay + 1], [left, right]);
  const dayWidth = x(firstDay + 1) - x(firstDay);
  const dropped = new Set(result.dropped.map(({ index }) => index));
  // Over months marks get smaller and the lines go over them, so that both are still seen.
  const half = Math.min(HALF, Math.max(LEAST_HALF, dayWidth / 9));
  const isDense = dayWidth < LEAST_DAY;

  const frame: Svg[] = [];
  const every = gridLabelsEvery(extent, top, bottom);
  for (const [k, mmHg] of gridOf(extent).entries()) {
    frame.push(line([left, y(mmHg), right, y(mmHg)], paint.grid, 0.6, null, 'figure-grid'));
    if (k % every > 0) continue;
    frame.push(
      label(words.say.short(mmHg), left - 5, y(mmHg) + 3.5, paint, { anchor: 'end', size: TEXT.small }),
    );
  }
  frame.push(
    label(words.sentence('report.mmHgAxis'), 11, (top + bottom) / 2, paint, {
      anchor: 'middle',
      turned: true,
    }),
  );
  frame.push(...dayParts(firstDay, lastDay, days.length > 0));
  const changes = clockChanges(readings);
  frame.push(...changeLines());

  const marks: Mark[] = [];
  const shapes: Svg[] = [];
  for (const sitting of sittingsOf(readings, rules)) {
    const centre = placeOf(sitting[0] as SeriesReading);
    const apart = Math.min(BESIDE, (dayWidth * 0.36) / sitting.length);
    const at = sitting.map((_, k) => centre + (k - (sitting.length - 1) / 2) * apart);
    for (const measure of ['systolic', 'diastolic'] as const) {
      const points = sitting.map((one, k) => {
        const value = one[measure];
        return value === null ? null : ([at[k] as number, y(value)] as const);
      });
      const d = pathThrough(points);
      if (sitting.length > 1 && d !== '')
        shapes.push(
          element('path', {
            d,
            fill: 'none',
            stroke: paint.muted,
            'stroke-width': 0.8,
            class: 'figure-pair',
          }),
        );
    }
    sitting.forEach((reading, k) => {
      const isUsed = !dropped.has(reading.index);
      const name = `reading-${reading.index}`;
      for (const measure of ['systolic', 'diastolic'] as const) {
        const value = reading[measure];
        if (value !== null)
          shapes.push(markShape(measure, at[k] as number, y(value), isUsed, paint, name, half));
      }
      const value = reading.systolic ?? reading.diastolic;
      if (value !== null)
        marks.push({
          key: name,
          index: reading.index,
          x: at[k] as number,
          y: y(value),
          text: markText(reading),
          isUsed,
        });
    });
  }

  const lines = [
    ...limitLine(rules.highSystolic, 'systolic'),
    ...limitLine(rules.highDiastolic, 'diastolic'),
    ...meanLine('systolic'),
    ...meanLine('diastolic'),
    ...lineLabels(),
  ];
  const empty = values.length === 0 ? [label(words.sentence('report.noReadings'), (left + right) / 2, (top + bottom) / 2, paint, { anchor: 'middle' })] : []; // biome-ignore format: one thought
  const title = words.sentence('report.homeFigure');
  const mean = meansText(result.mean, rules.highSystolic, rules.highDiastolic, words);
  const description = [
    words.sentence('report.homeSays', {
      used: result.used,
      all: readings.length,
      days: result.days,
      left: result.dropped.length,
    }),
    ...(mean === null ? [] : [words.sentence('report.meanSays', { mean })]),
    words.sentence('report.limitSays', { limit: limitsText(rules.highSystolic, rules.highDiastolic, words) }),
    ...(changes.length === 0
      ? []
      : [
          words.sentence('report.clockChangedBefore', {
            parts: changes.map(({ after }) => dayText(homeDayOf(after, rules), words)),
          }),
        ]),
  ].join(' ');
  const svg = drawn(drawing, title, description, words.say.locale, [
    ...frame,
    ...(isDense ? [...shapes, ...lines] : [...lines, ...shapes]),
    ...empty,
    ...extendedNote(extent, left, top, words, paint),
    ...keyLines(key, left, height, paint),
  ]);
  return {
    svg,
    width,
    height,
    title,
    description,
    marks,
    table: homeTable({ readings, result, rules }, words),
  };

  /** Where a sitting stands in its day: from the start of the day, with room at the edges for its readings. */
  function placeOf(reading: SeriesReading): number {
    const since = (reading.minuteOfDay - rules.dayStartsAt + DAY_MINUTES) % DAY_MINUTES;
    return x(homeDayOf(reading, rules) + 0.1 + (0.8 * since) / DAY_MINUTES);
  }

  function dayParts(from: number, to: number, hasDays: boolean): Svg[] {
    const parts: Svg[] = [line([left, bottom, right, bottom], paint.ink, 0.8, null, 'figure-axis')];
    if (!hasDays) return parts;
    const every = Math.ceil((to - from + 1) / Math.max(1, Math.floor((right - left) / LABEL_WIDTH)));
    for (let day = from; day <= to; day++) {
      if (day > from && (!isDense || (day - from) % every === 0))
        parts.push(line([x(day), top, x(day), bottom], paint.grid, 0.6, '1 3', 'figure-grid'));
      if ((day - from) % every > 0) continue;
      const middle = x(day + 0.5);
      parts.push(label(words.sentence('report.dayNumber', { day: day - from + 1 }), middle, bottom + 12, paint, { anchor: 'middle' })); // biome-ignore format: one thought
      parts.push(label(dayText(day, words, true), middle, bottom + 24, paint, { anchor: 'middle', size: TEXT.small, isMuted: true })); // biome-ignore format: one thought
    }
    return parts;
  }

  /** Where the clock was changed: between two days, or between the readings of one. */
  function changeLines(): Svg[] {
    return changes.flatMap(({ before, after }) => {
      const day = homeDayOf(after, rules);
      const at = homeDayOf(before, rules) < day ? x(day) : (placeOf(before) + placeOf(after)) / 2;
      // At the right edge its words stand before it.
      const isLate = right - at < CHANGE_WIDTH;
      return [
        line([at, top, at, bottom], paint.ink, 0.8, '1 2', 'figure-clock-change'),
        label(words.sentence('report.clockChange'), at + (isLate ? -3 : 3), top + 9, paint, {
          size: TEXT.small,
          ...(isLate ? { anchor: 'end' } : {}),
        }),
      ];
    });
  }

  function limitLine(limit: SidedLimit | null, measure: 'systolic' | 'diastolic'): Svg[] {
    if (limit === null) return [];
    const at = y(limit.limit);
    const dash = measure === 'systolic' ? DASH.systolicLimit : DASH.diastolicLimit;
    return [line([left, at, right, at], paint.ink, 1, dash, `figure-limit is-${measure}`)];
  }

  function meanLine(measure: 'systolic' | 'diastolic'): Svg[] {
    const mean = result.mean[measure];
    if (mean === null) return [];
    const at = y(mean);
    return [line([left, at, right, at], paint.muted, 1.2, null, `figure-mean is-${measure}`)];
  }

  /** Each mean and limit at the right of its line, the mean first where they are one. */
  function lineLabels(): Svg[] {
    const labels = (['systolic', 'diastolic'] as const).flatMap((measure) => {
      const mean = result.mean[measure];
      const limit = measure === 'systolic' ? rules.highSystolic : rules.highDiastolic;
      return [
        ...(mean === null
          ? []
          : [{ at: mean, text: words.sentence('report.mean', { mean: meanText(mean, limit, words) }), isBold: true }]), // biome-ignore format: one thought
        ...(limit === null
          ? []
          : [{ at: limit.limit, text: words.sentence('report.limit', { limit: limit.limit }), isBold: false }]), // biome-ignore format: one thought
      ];
    });
    const places = movedApart(labels.map(({ at }) => y(at)));
    return labels.map(({ text, isBold }, k) =>
      label(text, right + 4, (places[k] as number) + 3, paint, { size: TEXT.small, isBold }),
    );
  }

  function markText(reading: SeriesReading): string {
    const { systolic, diastolic, pulse, index } = reading;
    const left = result.dropped.find((one) => one.index === index);
    return [
      words.sentence('report.readingAt', {
        when: timeOfReading(reading, about, words, true),
        pressure: pressureText(systolic, diastolic, words),
        pulse,
      }),
      ...(left === undefined ? [] : [words.sentence('report.notUsed', { why: words.detail(left) })]),
    ].join(' ');
  }
}

/** Readings between which the wall clock moved against UTC: it was changed, or the person was in another zone. */
function clockChanges(readings: readonly SeriesReading[]) {
  const inOrder = inTimeOrder(readings);
  return inOrder.flatMap((after, k) => {
    const before = inOrder[k - 1];
    return before === undefined || offsetOf(before) === offsetOf(after) ? [] : [{ before, after }];
  });
}

/** Both limits as one pressure; null where there is none. */
export function limitsText(
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
  words: Words,
): string | null {
  if (systolic === null && diastolic === null) return null;
  return pressureText(systolic?.limit ?? null, diastolic?.limit ?? null, words);
}

/** Day by day: what was read in each part of the day, and the mean of what is used. */
export function homeTable({ readings, result, rules }: HomeDrawn, words: Words): DataTable {
  const dropped = new Set(result.dropped.map(({ index }) => index));
  const days = [...new Set(readings.map((one) => homeDayOf(one, rules)))].sort((a, b) => a - b);
  const parts = ['morning', 'evening', 'other'] as const;
  const inPart = (day: number | null, part: (typeof parts)[number]) =>
    sittingsOf(
      readings.filter(
        (one) => (day === null || homeDayOf(one, rules) === day) && dayPartOf(one, rules) === part,
      ),
      rules,
    ).flat();
  const shown = parts.filter((part) => part !== 'other' || inPart(null, part).length > 0);
  return {
    caption: words.sentence('report.homeTable'),
    columns: [
      words.sentence('report.day'),
      ...shown.map((part) => words.sentence(`report.${part}`)),
      words.sentence('report.dayMean'),
    ],
    rows: days.map((day) => {
      const mean = result.dayMeans.find((one) => one.day === day);
      return [
        `${day - (days[0] as number) + 1}. ${dayText(day, words, true)}`,
        ...shown.map((part) =>
          inPart(day, part)
            .map((one) => {
              const text = pressureText(one.systolic, one.diastolic, words);
              return dropped.has(one.index) ? `(${text})` : text;
            })
            .join(', '),
        ),
        mean === undefined ? '-' : dayMeanText(mean, rules.highSystolic, rules.highDiastolic, words),
      ];
    }),
  };
}
