import {
  type AmbulatoryResult,
  type AmbulatoryRules,
  type DayNight,
  OUT_OF_OFFICE_FIGURES as F,
  hourlyMeans,
  inTimeOrder,
  type PeriodOf,
  periodOf,
  type SeriesReading,
  type SidedLimit,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, pathThrough, type Svg } from '../svg/svg.js';
import { type DataTable, type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { limitsText } from './homeFigure.js';
import { PAPER } from './paint.js';
import { DASH, keyLines, label, line, markShape, movedApart, SMALL_LINE, TEXT, wrapped } from './parts.js';
import { extendedNote, extentOf, gridLabelsEvery, gridOf, upScale } from './pressureAxis.js';
import { clockText, DAY_MINUTES, HOUR_MS, MINUTE_MS, meansText, offsetOf, pressureText } from './times.js';

/** A recording over 24 hours, as it was answered. `readings` are all that were read, used or not. */
export type RecordingDrawn = {
  readonly readings: readonly SeriesReading[];
  readonly result: AmbulatoryResult;
  readonly rules: AmbulatoryRules;
  readonly dayNight: DayNight;
};

/** Scales, extended where data lie outside. Source: out-of-office handbook 18, point 3; the pulse's by decision. */
const PRESSURE = { low: 40, high: 220 } as const;
const PULSE = { low: 40, high: 120 } as const;

const USUAL: Drawing = { id: 'recording', width: 680, height: 400, paint: PAPER };
const MARGIN = { left: 46, right: 62, top: 14, bottom: 46 } as const;
const STRIP = 62;
/** A lower drawing, as a full sheet leaves it, has a lower strip too. */
const LOW = { height: 280, strip: 40 } as const;
const BETWEEN = 16;
const HOURS = 24;
/** Hours between labels of the clock, the closest for which there is room. */
const TICK_HOURS = [3, 6, 12];
const CLOCK_WIDTH = 38;

/**
 * The profile over 24 hours: pressure in one panel, pulse in a strip of its own under it. Across a gap of more than two hours no line is
 * drawn. The clock of the person stands under it, also through a night on which it changes; distances are of time that passed.
 *
 * Source: out-of-office handbook 18, point 3.
 */
export function recordingFigure(given: RecordingDrawn, words: Words, how: Partial<Drawing> = {}): Figure {
  const { result, rules, dayNight } = given;
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const hasFailed = given.readings.some((one) => one.systolic === null && one.diastolic === null);
  const keyText = [
    words.sentence('report.recordingKey'),
    ...(hasFailed ? [words.sentence('report.recordingCross')] : []),
  ].join(' ');
  const key = wrapped(keyText, width - MARGIN.left, TEXT.small);
  const stripBottom = height - MARGIN.bottom - (key.length - 1) * SMALL_LINE;
  const stripTop = stripBottom - (height < LOW.height ? LOW.strip : STRIP);
  const bottom = stripTop - BETWEEN;
  const readings = inTimeOrder(given.readings);
  const edited = new Map(result.edited.map((one) => [one.index, one]));
  const kept = readings.filter(({ index }) => !edited.has(index));

  const clock = wallClock(readings);
  const ends = Math.max(HOURS, ...kept.map(({ atMs }) => Math.ceil((atMs - clock.startMs) / HOUR_MS)));
  const x = scaleLinear([0, ends], [left, right]);
  const hoursOf = ({ atMs }: SeriesReading) => (atMs - clock.startMs) / HOUR_MS;
  const shownReadings = readings.filter((one) => hoursOf(one) <= ends);
  const limits = [rules.daySystolic, rules.dayDiastolic, rules.nightSystolic, rules.nightDiastolic].flatMap(
    (one) => (one === null ? [] : [one.limit]),
  );
  const pressures = known(shownReadings.flatMap(({ systolic, diastolic }) => [systolic, diastolic]));
  const pulses = known(shownReadings.map(({ pulse }) => pulse));
  const extent = extentOf([...pressures, ...limits], PRESSURE.low, PRESSURE.high);
  const pulseExtent = extentOf(pulses, PULSE.low, PULSE.high);
  const y = upScale(extent, top, bottom);
  const pulseY = upScale(pulseExtent, stripTop, stripBottom);
  const isNapKnown = dayNight.by === 'asleep-range' && dayNight.nap != null;
  const stretches = stretchesOf(readings, kept, dayNight, clock, ends);

  const marks: Mark[] = [];
  const shapes: Svg[] = [];
  for (const reading of shownReadings) {
    const { index, systolic, diastolic, pulse } = reading;
    const isUsed = !edited.has(index);
    const name = `reading-${index}`;
    const at = x(hoursOf(reading));
    if (systolic !== null && diastolic !== null) {
      shapes.push(line([at, y(systolic), at, y(diastolic)], isUsed ? paint.ink : paint.muted, 0.8, isUsed ? null : '2 2', 'figure-bar')); // biome-ignore format: one thought
    }
    if (systolic !== null) shapes.push(markShape('systolic', at, y(systolic), isUsed, paint, name));
    if (diastolic !== null) shapes.push(markShape('diastolic', at, y(diastolic), isUsed, paint, name));
    const none = systolic === null && diastolic === null;
    if (none) shapes.push(markShape('cross', at, bottom - 6, false, paint, name));
    if (pulse !== null) shapes.push(markShape('pulse', at, pulseY(pulse), isUsed, paint, name));
    marks.push({
      key: name,
      index,
      x: at,
      y: none ? bottom - 6 : y(systolic ?? (diastolic as number)),
      text: markText(reading),
      isUsed,
    });
  }

  const title = words.sentence('report.recordingFigure');
  const description = describe();
  const svg = drawn(drawing, title, description, words.say.locale, [
    ...shading(),
    ...grid(),
    ...hourTicks(),
    ...steps(),
    ...limitLabels(),
    ...traces(),
    ...hourBars(),
    ...shapes,
    ...(pressures.length === 0
      ? [label(words.sentence('report.noReadings'), (left + right) / 2, (top + bottom) / 2, paint, { anchor: 'middle' })] // biome-ignore format: one thought
      : []),
    ...extendedNote(extent, left, top, words, paint),
    ...keyLines(key, left, height, paint),
  ]);
  return { svg, width, height, title, description, marks, table: hourTable(kept, words) };

  function shading(): Svg[] {
    return stretches
      .filter(({ period }) => period === 'night' || (period === 'neither' && isNapKnown))
      .flatMap(({ from, to, period }) => {
        const isNap = period === 'neither';
        const [x0, wide] = [x(from), x(to) - x(from)];
        const rect = (y0: number, y1: number) =>
          element('rect', {
            x: x0,
            y: y0,
            width: wide,
            height: y1 - y0,
            fill: paint.shade,
            'fill-opacity': isNap ? 0.6 : 1,
            class: isNap ? 'figure-nap' : 'figure-night',
          });
        const byDiary = isNap ? 'report.nap' : 'report.asleep';
        const word = words.sentence(result.dayNightBy === 'diary' ? byDiary : 'report.nightByClock');
        return [
          rect(top, bottom),
          rect(stripTop, stripBottom),
          ...(wide > (isNap ? LEAST_NAP : LEAST_NIGHT)
            ? [label(word, x0 + wide / 2, top + 10, paint, { anchor: 'middle', size: TEXT.small })]
            : []),
        ];
      });
  }

  function grid(): Svg[] {
    const small = { anchor: 'end', size: TEXT.small } as const;
    const middleOf = (a: number, b: number) => (a + b) / 2;
    return [
      ...gridOf(extent).flatMap((mmHg, k) => [
        line([left, y(mmHg), right, y(mmHg)], paint.grid, 0.6, null, 'figure-grid'),
        ...(k % gridLabelsEvery(extent, top, bottom) === 0
          ? [label(words.say.short(mmHg), left - 5, y(mmHg) + 3, paint, small)]
          : []),
      ]),
      ...gridOf(pulseExtent).flatMap((rate, k) => [
        line([left, pulseY(rate), right, pulseY(rate)], paint.grid, 0.6, null, 'figure-grid'),
        ...(k % Math.max(2, gridLabelsEvery(pulseExtent, stripTop, stripBottom)) === 0
          ? [label(words.say.short(rate), left - 5, pulseY(rate) + 3, paint, small)]
          : []),
      ]),
      label(words.sentence('report.mmHgAxis'), 11, middleOf(top, bottom), paint, {
        anchor: 'middle',
        turned: true,
      }),
      label(words.sentence('report.pulseAxis'), 11, middleOf(stripTop, stripBottom), paint, { anchor: 'middle', turned: true, size: TEXT.small }), // biome-ignore format: one thought
    ];
  }

  function hourTicks(): Svg[] {
    const parts: Svg[] = [];
    const every = TICK_HOURS.find((hours) => x(hours) - x(0) >= CLOCK_WIDTH) ?? HOURS;
    for (let hour = 0; hour <= ends; hour++) {
      const minute = clock.minuteAt(hour);
      const at = x(hour);
      parts.push(line([at, stripBottom, at, stripBottom + 3], paint.ink, 0.6, null, 'figure-tick'));
      if (Math.round(minute) % (every * 60) !== 0) continue;
      const isMidnight = Math.round(minute) % DAY_MINUTES === 0;
      parts.push(line([at, top, at, stripBottom], isMidnight ? paint.muted : paint.grid, isMidnight ? 1.2 : 0.6, null, isMidnight ? 'figure-midnight' : 'figure-grid')); // biome-ignore format: one thought
      parts.push(label(clockText(minute, words), at, stripBottom + 24, paint, { anchor: 'middle', isBold: isMidnight })); // biome-ignore format: one thought
    }
    for (const hour of clock.changes) {
      parts.push(line([x(hour), top, x(hour), stripBottom], paint.ink, 0.8, '1 2', 'figure-clock-change'));
      parts.push(
        label(words.sentence('report.clockChange'), x(hour) + 3, top + 20, paint, { size: TEXT.small }),
      );
    }
    // Where an hour is narrower than its number, the table has it.
    if (x(1) - x(0) < LEAST_HOUR) return parts;
    for (const { hour, n } of hourlyMeans(kept, 'systolic')) {
      const at = hourPlace(hour);
      if (at !== null) parts.push(label(words.say.short(n), x(at + 0.5), stripBottom + 12, paint, { anchor: 'middle', size: TEXT.small, isMuted: true })); // biome-ignore format: one thought
    }
    parts.push(label(words.sentence('report.nOfHour'), right + 4, stripBottom + 12, paint, { size: TEXT.small, isMuted: true })); // biome-ignore format: one thought
    return parts;
  }

  /** Where an hour of the clock begins, by its first reading that is used; null where the plot does not hold it. */
  function hourPlace(hour: number): number | null {
    const first = kept.find(({ minuteOfDay }) => Math.floor(minuteOfDay / 60) === hour);
    return first === undefined ? null : Math.floor(hoursOf(first) + 1e-9);
  }

  function hourBars(): Svg[] {
    return (['systolic', 'diastolic'] as const).flatMap((measure) =>
      hourlyMeans(kept, measure).flatMap(({ hour, mean }) => {
        const at = hourPlace(hour);
        if (at === null) return [];
        return [
          line(
            [x(at) + 1, y(mean), x(at + 1) - 1, y(mean)],
            paint.muted,
            2,
            null,
            `figure-hour is-${measure}`,
          ),
        ];
      }),
    );
  }

  /** Limits as steps that change at sleep and waking. */
  function steps(): Svg[] {
    return (['systolic', 'diastolic'] as const).flatMap((measure) => {
      const points: ([number, number] | null)[] = [];
      for (const { from, to, period } of stretches) {
        const limit = limitOf(period, measure);
        if (limit === null) points.push(null);
        else points.push([x(from), y(limit.limit)], [x(to), y(limit.limit)]);
      }
      const d = pathThrough(points);
      if (d === '') return [];
      const dash = measure === 'systolic' ? DASH.systolicLimit : DASH.diastolicLimit;
      return [
        element('path', { d, fill: 'none', stroke: paint.ink, 'stroke-width': 1, 'stroke-dasharray': dash, class: `figure-limit is-${measure}` }), // biome-ignore format: one thought
      ];
    });
  }

  /** Each limit at the right, with its period where they differ. */
  function limitLabels(): Svg[] {
    const labels = (['systolic', 'diastolic'] as const).flatMap((measure) => {
      const [day, night] = [limitOf('day', measure), limitOf('night', measure)];
      if (day !== null && (night === null || night.limit === day.limit))
        return [{ at: day.limit, text: words.say.limit(day.limit) }];
      return (['day', 'night'] as const).flatMap((period) => {
        const limit = limitOf(period, measure);
        if (limit === null || !stretches.some((one) => one.period === period)) return [];
        const text = words.sentence('report.limitOf', {
          limit: limit.limit,
          period: words.title('period', period),
        });
        return [{ at: limit.limit, text }];
      });
    });
    const places = movedApart(labels.map(({ at }) => y(at)));
    return labels.map(({ text }, k) =>
      label(text, right + 4, (places[k] as number) + 3, paint, { size: TEXT.small }),
    );
  }

  function limitOf(period: PeriodOf, measure: 'systolic' | 'diastolic'): SidedLimit | null {
    if (period === 'neither') return null;
    if (period === 'day') return measure === 'systolic' ? rules.daySystolic : rules.dayDiastolic;
    return measure === 'systolic' ? rules.nightSystolic : rules.nightDiastolic;
  }

  /** Lines from reading to reading, broken over a gap of more than two hours. */
  function traces(): Svg[] {
    return (['systolic', 'diastolic', 'pulse'] as const).flatMap((measure) => {
      const scale = measure === 'pulse' ? pulseY : y;
      const points: ([number, number] | null)[] = [];
      let before: number | null = null;
      for (const reading of kept) {
        const value = reading[measure];
        if (value === null) continue;
        const at = hoursOf(reading);
        if (before !== null && at - before > F.longestStepHours.value) points.push(null);
        points.push([x(at), scale(value)]);
        before = at;
      }
      const d = pathThrough(points);
      if (d === '') return [];
      const dash = measure === 'diastolic' ? DASH.diastolicTrace : null;
      return [element('path', { d, fill: 'none', stroke: paint.muted, 'stroke-width': 0.7, 'stroke-dasharray': dash, class: `figure-trace is-${measure}` })]; // biome-ignore format: one thought
    });
  }

  function describe(): string {
    const { counts, judged, day, night } = result;
    return [
      words.sentence('report.recordingSays', {
        kept: counts.kept,
        all: readings.length,
        day: counts.day,
        night: counts.night,
        edited: result.edited.length,
      }),
      words.sentence('report.recordingMeans', {
        whole: meansText(judged.whole.mean, rules.wholeSystolic, rules.wholeDiastolic, words),
        day: meansText(day.mean, rules.daySystolic, rules.dayDiastolic, words),
        night: meansText(night.mean, rules.nightSystolic, rules.nightDiastolic, words),
      }),
      words.sentence('report.recordingLimits', {
        day: limitsText(rules.daySystolic, rules.dayDiastolic, words),
        night: limitsText(rules.nightSystolic, rules.nightDiastolic, words),
      }),
    ].join(' ');
  }

  function markText(reading: SeriesReading): string {
    const { systolic, diastolic, pulse, index, minuteOfDay } = reading;
    const left = edited.get(index);
    const period = periodOf(reading, dayNight);
    return [
      words.sentence('report.readingAt', {
        when: clockText(minuteOfDay, words),
        pressure: pressureText(systolic, diastolic, words),
        pulse,
      }),
      ...(left !== undefined
        ? [words.sentence('report.notUsed', { why: words.detail(left) })]
        : period === 'neither'
          ? []
          : [words.sentence('report.ofPeriod', { period: words.title('period', period) })]),
    ].join(' ');
  }
}

/** Hour by hour, with the number of readings. An hour without any is not there. */
function hourTable(kept: readonly SeriesReading[], words: Words): DataTable {
  const of = (measure: 'systolic' | 'diastolic' | 'pulse') =>
    new Map(hourlyMeans(kept, measure).map((one) => [one.hour, one.mean]));
  const [systolic, diastolic, pulse] = [of('systolic'), of('diastolic'), of('pulse')];
  const counts = new Map<number, number>();
  for (const { minuteOfDay } of kept) {
    const hour = Math.floor(minuteOfDay / 60);
    counts.set(hour, (counts.get(hour) ?? 0) + 1);
  }
  const shown = (value: number | undefined) => (value === undefined ? '-' : words.say.number(value, 1));
  return {
    caption: words.sentence('report.hourTable'),
    columns: [
      words.sentence('report.hour'),
      words.sentence('report.n'),
      words.sentence('report.systolic'),
      words.sentence('report.diastolic'),
      words.sentence('report.pulse'),
    ],
    rows: [...counts].map(([hour, n]) => [
      clockText(hour * 60, words),
      words.say.short(n),
      shown(systolic.get(hour)),
      shown(diastolic.get(hour)),
      shown(pulse.get(hour)),
    ]),
  };
}

function known(values: readonly (number | null)[]): number[] {
  return values.filter((one): one is number => one !== null);
}

/** The wall clock beside hours that passed since the hour in which the recording began. */
type WallClock = {
  readonly startMs: number;
  /** Minute of the day at that many hours. */
  readonly minuteAt: (hours: number) => number;
  /** About where the clock was set forward or back, in hours. */
  readonly changes: readonly number[];
};

/** Without a reading the clock begins at midnight. */
function wallClock(inOrder: readonly SeriesReading[]): WallClock {
  const [first] = inOrder;
  if (first === undefined)
    return { startMs: 0, minuteAt: (hours) => (hours * 60) % DAY_MINUTES, changes: [] };
  const intoHour = first.minuteOfDay % 60;
  const startMs = Math.floor(first.atMs / MINUTE_MS) * MINUTE_MS - intoHour * MINUTE_MS;
  const startMinute = first.minuteOfDay - intoHour;
  const changes: { readonly hours: number; readonly minutes: number }[] = [];
  for (let k = 1; k < inOrder.length; k++) {
    const [a, b] = [inOrder[k - 1] as SeriesReading, inOrder[k] as SeriesReading];
    const minutes = offsetOf(b) - offsetOf(a);
    if (minutes !== 0) changes.push({ hours: changeBetween(a, b), minutes });
  }
  return { startMs, minuteAt, changes: changes.map(({ hours }) => hours) };

  function minuteAt(hours: number): number {
    const moved = changes.filter((one) => one.hours <= hours).reduce((sum, { minutes }) => sum + minutes, 0);
    return (((startMinute + hours * 60 + moved) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  }

  /**
   * Somewhere between two readings: at the whole hour nearest to two at night, when clocks are usually changed; half way where no
   * whole hour lies between. Source: decision.
   */
  function changeBetween(a: SeriesReading, b: SeriesReading): number {
    const [from, to] = [(a.atMs - startMs) / HOUR_MS, (b.atMs - startMs) / HOUR_MS];
    let best: number | null = null;
    const awayFromTwo = (hours: number) =>
      Math.abs(((minuteAt(hours) + DAY_MINUTES / 2) % DAY_MINUTES) - TWO_AT_NIGHT);
    for (let hour = Math.floor(from) + 1; hour <= to; hour++) {
      if (best === null || awayFromTwo(hour) < awayFromTwo(best)) best = hour;
    }
    return best ?? (from + to) / 2;
  }
}

/** A stretch at least so wide has room for its word. */
const LEAST_NIGHT = 34;
/** An hour that has room for how many readings it has. */
const LEAST_HOUR = 9;
const LEAST_NAP = 24;

/** Two at night in minutes from noon, so that hours on both sides of midnight are near it. */
const TWO_AT_NIGHT = 14 * 60;

type Stretch = { readonly from: number; readonly to: number; readonly period: PeriodOf };

/** Day and night along the plot, in hours: by the clock's ranges, or by marks half way between the readings on both sides. */
function stretchesOf(
  readings: readonly SeriesReading[],
  kept: readonly SeriesReading[],
  dayNight: DayNight,
  clock: WallClock,
  ends: number,
): Stretch[] {
  const [some] = readings;
  if (some === undefined) return [];
  const stretches: { from: number; to: number; period: PeriodOf }[] = [];
  const go = (period: PeriodOf, from: number, to: number) => {
    const last = stretches.at(-1);
    if (last !== undefined && last.period === period) last.to = to;
    else stretches.push({ from, to, period });
  };
  if (dayNight.by === 'asleep-marks') {
    const at = kept.map(({ atMs }) => (atMs - clock.startMs) / HOUR_MS);
    kept.forEach((reading, k) => {
      const from = k === 0 ? 0 : ((at[k - 1] as number) + (at[k] as number)) / 2;
      const to = k === kept.length - 1 ? ends : ((at[k] as number) + (at[k + 1] as number)) / 2;
      go(periodOf(reading, dayNight), from, to);
    });
    return stretches;
  }
  for (let minute = 0; minute < ends * 60; minute++) {
    const minuteOfDay = Math.round(clock.minuteAt(minute / 60)) % DAY_MINUTES;
    go(periodOf({ ...some, minuteOfDay }, dayNight), minute / 60, (minute + 1) / 60);
  }
  return stretches;
}
