import { HOUR_MS, MINUTE_MS } from './clock.js';
import type { DayPart, SeriesReading } from './seriesReading.js';

/** A reading of an invented series: day from 0, clock `HH:MM`, `142/90 78`. UTC, so that clock and instant agree. */
export function readingAt(index: number, day: number, clock: string, typed: string): SeriesReading {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  const [systolic = null, diastolic = null, pulse = null] = typed.split(/[/ ]/).map(Number);
  const minuteOfDay = hours * 60 + minutes;
  return {
    index,
    atMs: day * 24 * HOUR_MS + minuteOfDay * MINUTE_MS,
    localDay: day,
    minuteOfDay,
    systolic,
    diastolic,
    pulse,
    asleep: null,
    part: null as DayPart | null,
    site: 'upper-arm',
  };
}

/** Invented home week H1 of the out-of-office handbook 19: two readings morning and evening, days 1 to 7. */
const H1_ROWS = `
152/94 78, 148/92 77 | 146/90 80, 143/88 79
141/88 74, 138/86 73 | 136/84 77, 133/83 76
139/87 72, 137/85 72 | 134/84 75, 132/82 74
143/89 73, 139/87 72 | 137/85 76, 135/83 75
138/86 71, 136/85 71 | 133/82 74, 131/81 74
140/88 73, 137/86 72 | 135/84 76, 134/83 75
142/88 72, 139/86 72 | 136/85 75, 133/82 74`;

const CLOCKS = ['07:30', '07:31', '20:30', '20:31'];

export const H1: readonly SeriesReading[] = H1_ROWS.trim()
  .split('\n')
  .flatMap((row, day) =>
    row.split(/, | \| /).map((typed, at) => readingAt(day * 4 + at + 1, day, CLOCKS[at] as string, typed)),
  );

/** Invented recording A1 of the out-of-office handbook 19: bed 23:00, waking 07:00. */
const A1_ROWS = `09:00 142/90 78; 09:30 138/88 76; 10:00 145/92 82; 10:30 140/89 80; 11:00 136/86 75; 11:30 139/87 77;
12:00 144/90 84; 12:30 137/85 79; 13:00 133/82 74; 13:30 131/81 72; 14:00 134/83 73; 14:30 138/86 76; 15:00 141/88 78;
15:30 139/87 77; 16:00 143/90 80; 16:30 146/92 83; 17:00 140/88 79; 17:30 137/86 77; 18:00 141/89 81; 18:30 138/87 80;
19:00 135/84 76; 19:30 133/83 75; 20:00 136/85 74; 20:30 132/82 73; 21:00 130/80 72; 21:30 134/83 73; 22:00 129/79 70;
22:30 127/78 69; 23:30 121/73 64; 00:30 116/69 61; 01:30 112/66 59; 02:30 109/64 58; 03:30 113/67 59; 04:30 111/65 57;
05:30 117/70 60; 06:30 122/74 63; 07:15 133/84 72; 07:45 139/88 76; 08:15 143/91 79; 08:45 141/90 78`;

export const A1: readonly SeriesReading[] = A1_ROWS.split(/;\s*/).map((row, at) => {
  const [clock = '', ...typed] = row.trim().split(' ');
  return readingAt(at + 1, clock < '09:00' ? 1 : 0, clock, typed.join(' '));
});
